/** Everything the program can do, said once: one class a verb. May use domain, engine, io and report; command line and window call it. */
package fairpull.app.usecase;
