/** The window: views that show a document and send it edits. No sums and no sentences about results are made here. */
package fairpull.ui;
