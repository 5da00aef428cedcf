/** What somebody types, read: measures, orders, amounts, gates, air, corrections, with words for what it cannot read. Knows no files. */
package fairpull.app.usecase.typing;
