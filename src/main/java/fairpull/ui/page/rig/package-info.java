/** The page of what the car is measured on, and how much its figures scatter. */
package fairpull.ui.page.rig;
