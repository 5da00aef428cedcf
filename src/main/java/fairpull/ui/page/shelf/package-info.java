/** Tests in a folder: a list of them with their verdicts, and the rig on which they were run over time. Stands in a window of its own. */
package fairpull.ui.page.shelf;
