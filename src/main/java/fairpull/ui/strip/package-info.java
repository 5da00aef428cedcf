/** The day strip: the face of the program, its index, and the editor of the sequence. */
package fairpull.ui.strip;
