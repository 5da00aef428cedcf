/** What a test, or a plain table of pulls, says: judged, shown, written as a report. */
package fairpull.app.usecase.judging;
