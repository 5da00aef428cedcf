/** What the judge is given and what it answers: rows of pulls, settings, estimates, verdicts, notices. Codes and numbers, no sentences. */
package fairpull.domain.finding;
