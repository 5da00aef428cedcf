/** The page of what must hold before a pull starts: air, heat, gates, checklist. */
package fairpull.ui.page.limits;
