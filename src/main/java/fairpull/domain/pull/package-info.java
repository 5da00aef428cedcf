/** What came in on the day: tables as exported, how their columns are read, the fate of every pull, the log. */
package fairpull.domain.pull;
