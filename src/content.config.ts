import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { checkedGlob, yamlList } from './content-loaders.ts';
import { cautionSchema } from './course/schema/caution.ts';
import { exerciseSchema } from './course/schema/exercise.ts';
import { glossaryEntrySchema } from './course/schema/glossary.ts';
import { inverterSchema } from './course/schema/inverter.ts';
import { lessonSchema } from './course/schema/lesson.ts';
import { siteSchema } from './course/schema/site.ts';
import { sourceSchema } from './course/schema/source.ts';
import { unitSchema } from './course/schema/unit.ts';

export const collections = {
  lessons: defineCollection({
    loader: checkedGlob(glob({ base: 'content/lessons', pattern: '*/*.mdx' }), lessonSchema),
    schema: lessonSchema,
  }),
  // An exercise is known by its file name alone, so that it can move between units and keep its address.
  exercises: defineCollection({
    loader: checkedGlob(
      glob({
        base: 'content/exercises',
        pattern: '*/*.yaml',
        generateId: ({ entry }) => entry.replace(/^.*\//, '').replace(/\.yaml$/, ''),
      }),
      exerciseSchema,
    ),
    schema: exerciseSchema,
  }),
  inverters: defineCollection({
    loader: checkedGlob(glob({ base: 'content/equipment/inverters', pattern: '*.yaml' }), inverterSchema),
    schema: inverterSchema,
  }),
  sites: defineCollection({
    loader: checkedGlob(glob({ base: 'content/sites', pattern: '*.yaml' }), siteSchema),
    schema: siteSchema,
  }),
  units: defineCollection({
    loader: yamlList('content/lessons/units.yaml', unitSchema, (unit) => unit.slug),
    schema: unitSchema,
  }),
  glossary: defineCollection({
    loader: yamlList('content/glossary.yaml', glossaryEntrySchema, (entry) => entry.id),
    schema: glossaryEntrySchema,
  }),
  sources: defineCollection({
    loader: yamlList('content/sources.yaml', sourceSchema, (source) => source.id),
    schema: sourceSchema,
  }),
  cautions: defineCollection({
    loader: yamlList('content/cautions.yaml', cautionSchema, (caution) => caution.id),
    schema: cautionSchema,
  }),
};
