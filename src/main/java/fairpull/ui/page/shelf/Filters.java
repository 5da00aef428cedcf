package fairpull.ui.page.shelf;

import fairpull.app.usecase.shelf.ListedTest;
import fairpull.app.usecase.shelf.ListedTest.Outcome;
import fairpull.ui.form.Choice;
import fairpull.ui.page.shelf.TestRows.Row;
import fairpull.ui.theme.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** Which tests are shown: those that hold every word, in a state, with a verdict. */
final class Filters extends JPanel {
    private static final String ANY = "any";
    private static final String NONE = "none";
    private static final List<String> VERDICTS = List.of(ANY, "gain", "loss", "no difference that matters", "undecided",
            "cannot be judged", NONE);

    private final JTextField text = new JTextField(18);
    private String state = ANY;
    private String verdict = ANY;

    Filters(Runnable changed) {
        super(new MigLayout("insets 0, gap 8 6"));
        setOpaque(false);
        JLabel label = new JLabel(Words.of("shelf.find"));
        label.setLabelFor(text);
        label.setDisplayedMnemonic(Words.mnemonic("shelf.find"));
        text.setName("shelf.find");
        text.setToolTipText(Words.tip(Words.of("shelf.find.tip")));
        text.getAccessibleContext().setAccessibleName(Words.of("shelf.find"));
        text.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                changed.run();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                changed.run();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                changed.run();
            }
        });
        add(label);
        add(text, "wmin 80");
        List<String> states = Stream.concat(Stream.of(ANY), Stream.of(ListedTest.State.values()).map(Enum::name)).toList();
        new Choice<>("shelf.state", states, one -> Words.of("shelf.state." + one), chosen -> {
            state = chosen;
            changed.run();
        }).addTo(this);
        new Choice<>("shelf.verdict", VERDICTS, one -> Words.of("shelf.verdict." + one.replace(" ", "_")), chosen -> {
            verdict = chosen;
            changed.run();
        }).addTo(this);
    }

    boolean shows(Row row, RowWords words) {
        String all = words.all(row).toLowerCase(Locale.ROOT);
        boolean inState = state.equals(ANY) || row.test().map(test -> test.state().name()).filter(state::equals).isPresent();
        Optional<String> found = row.test().flatMap(ListedTest::outcome).map(Outcome::verdict);
        boolean said = verdict.equals(ANY) || (verdict.equals(NONE) ? found.isEmpty() : found.filter(verdict::equals).isPresent());
        return inState && said && Stream.of(text.getText().toLowerCase(Locale.ROOT).strip().split("\\s+")).allMatch(all::contains);
    }
}
