/** What somebody else published: typed, kept, audited, and the fair repeat of it as a plan. */
package fairpull.app.usecase.auditing;
