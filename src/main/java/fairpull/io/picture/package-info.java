/** Pictures from strangers: read within bounds into pixels of the domain. Uses the domain and io.folder; only ImageIO beside them. */
package fairpull.io.picture;
