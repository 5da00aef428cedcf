/** How a car heats up and cools down between pulls: a logged cool-down, what is fitted to it, and the interval it asks for. */
package fairpull.domain.heat;
