/**
 * Reads exports and plain tables of pulls, step by step: bytes → text ({@code TextSource}; {@code FixedWidth} where columns have no
 * delimiter) → rows ({@code Rows}) → table and header ({@code Layout}) → columns ({@code ExportReader}, or {@code LongTable} for one
 * number a row) → pulls ({@code PullColumns} side by side, {@code PullMarks} one below the other; {@code ExportFile}) → one time base
 * ({@code TimeGroups}) → meaning ({@code ColumnGuess}) → channels ({@code MappedExport}).
 * The other way: {@code PullTableWriter}, {@code CurveTableWriter} and {@code SettingsWriter} make texts of tables. The only place that
 * sees FastCSV. Files are only ever read.
 */
package fairpull.io.table;
