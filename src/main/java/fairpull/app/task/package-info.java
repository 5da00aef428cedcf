/** Long work: chunks of it on all cores, with progress and cancelling. The only place that starts threads. */
package fairpull.app.task;
