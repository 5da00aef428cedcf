/**
 * Reads exports and plain tables of pulls, step by step: bytes → text ({@code TextSource}) → rows ({@code Rows}) → table and header
 * ({@code Layout}) → columns ({@code ExportReader}) → meaning ({@code ColumnGuess}) → channels ({@code MappedExport}).
 * The other way: {@code PullTableWriter}, {@code CurveTableWriter} and {@code SettingsWriter} make texts of tables. The only place that
 * sees FastCSV. Files are only ever read.
 */
package fairpull.io.table;
