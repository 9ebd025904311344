/**
 * The one script that runs before the first paint: it marks that scripts run and applies the stored colour
 * theme, so that a page never flashes in the wrong one. It stands in the page's head as text; its hash is in
 * the content security policy, which is why it is kept here and not in the layout.
 */
export const themeScript =
  "(d=>{d.dataset.js='';try{const t=localStorage.getItem('headroom.theme');" +
  "if(t==='light'||t==='dark')d.dataset.theme=t}catch{}})(document.documentElement)";
