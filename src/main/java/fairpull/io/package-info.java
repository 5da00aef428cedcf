/** Files in and out. Nothing here judges, words or draws. */
package fairpull.io;
