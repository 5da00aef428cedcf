/**
 * The makers of {@code demo-data}: two invented test days, drawn from a seed and written in the shapes that exports of roller rigs have.
 * Nothing here is measured. {@link fairpull.demo.DemoExports} writes the files, its test holds the committed ones to them byte for byte.
 */
package fairpull.demo;
