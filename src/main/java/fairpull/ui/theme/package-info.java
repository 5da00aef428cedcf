/** The look: colours by role, typefaces, the words of the window. One place for each. */
package fairpull.ui.theme;
