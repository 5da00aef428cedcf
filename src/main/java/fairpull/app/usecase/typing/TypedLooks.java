package fairpull.app.usecase.typing;

import fairpull.app.usecase.UsageException;
import fairpull.domain.plan.Looks;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks as people type them: the kind of spending, and after how many installs each look falls, such as {@code of:3,5}. */
public final class TypedLooks {
    private static final Pattern FORM = Pattern.compile("(of|pocock):(\\d{1,3}(?:,\\d{1,3})*)");

    private TypedLooks() {
    }

    /** {@return the looks that a text names; none where it is null} */
    public static Optional<Looks> parse(String option, String text) {
        if (text == null) {
            return Optional.empty();
        }
        Matcher parts = FORM.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!parts.matches()) {
            throw new UsageException(option, "expected of: (O’Brien–Fleming-like) or pocock: and after how many installs each look falls, "
                    + "such as of:3,5; found “" + text + "”");
        }
        try {
            return Optional.of(new Looks(parts.group(1).equals("of") ? Looks.Spending.OBRIEN_FLEMING : Looks.Spending.POCOCK,
                    Arrays.stream(parts.group(2).split(",")).map(Integer::valueOf).toList()));
        } catch (IllegalArgumentException contradiction) {
            throw new UsageException(option, contradiction.getMessage());
        }
    }
}
