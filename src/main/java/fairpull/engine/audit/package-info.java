/** What published figures can and cannot show: one class a question, pure. May use statistics, air and checks. */
package fairpull.engine.audit;
