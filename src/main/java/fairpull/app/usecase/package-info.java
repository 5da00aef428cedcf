/**
 * What every use case shares: answers, receipts, wrong usage, and files that are written where somebody asked. The use cases themselves
 * stand in a package each; they may use domain, engine, io and report, and those above them in the map. Command line and window call them.
 */
package fairpull.app.usecase;
