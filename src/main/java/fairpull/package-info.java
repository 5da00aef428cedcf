/** Fairpull: plans a fair back-to-back power test, judges it, and states what would overturn the answer. */
package fairpull;
