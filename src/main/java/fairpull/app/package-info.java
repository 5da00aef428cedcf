/** What the program can do, over engine, io and report; knows no surface. */
package fairpull.app;
