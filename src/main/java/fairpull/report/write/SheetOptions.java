package fairpull.report.write;

import fairpull.domain.unit.UnitSystem;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a run sheet is printed for.
 *
 * @param paper what it is printed on
 * @param units in which limits are read
 * @param date the day of the first session; a field to fill where it is empty, as it is for further sessions
 */
public record SheetOptions(Paper paper, UnitSystem units, Optional<LocalDate> date) {
}
