package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.unit.Quantity;
import fairpull.io.table.ColumnChoice;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Columns named by hand, as typed. */
public final class TypedColumns {
    private TypedColumns() {
    }

    /** {@return which column was chosen for which quantity} */
    public static Map<Quantity, ColumnChoice> choices(List<String> columns) {
        Map<Quantity, ColumnChoice> choices = new EnumMap<>(Quantity.class);
        for (String typed : columns) {
            Map.Entry<Quantity, ColumnChoice> choice = ColumnChoice.parse(typed).orElseThrow(() -> new UsageException("--column",
                    "expected QUANTITY=NAME[:UNIT], such as power=\"P wheel\":kW; found “" + typed + "”"));
            choices.put(choice.getKey(), choice.getValue());
        }
        return choices;
    }
}
