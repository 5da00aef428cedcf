/** The window around the pages: title, strip, path, side panel, menus. */
package fairpull.ui.frame;
