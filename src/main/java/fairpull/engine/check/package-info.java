/** What the exports themselves show against a pull: one check a class, each with one code, its figures and the pulls it names. */
package fairpull.engine.check;
