package fairpull.ui.page.audit;

import fairpull.app.usecase.auditing.AuditTyping;
import fairpull.domain.audit.FigureDraft;
import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication.Claim;
import fairpull.ui.form.Choice;
import fairpull.ui.form.Entry;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** What is claimed of the figures, in the words of whoever claims it. */
final class ClaimsCard extends RowsCard {
    private static final List<String> COLUMNS = List.of("[10:10:, grow 47, fill]", "[10:10:, grow 33, fill]", "[10:10:, grow 20, fill]");

    private final AuditDesk desk;

    ClaimsCard(AuditDesk desk) {
        super("audit.claims", COLUMNS, List.of("audit.claim.words", "audit.claim.about", "audit.claim.gain"));
        this.desk = desk;
    }

    void refresh() {
        refresh(desk.draft().claims().size());
    }

    @Override
    void another() {
        desk.edit("audit.claims.add", draft -> draft.withAnotherClaim());
    }

    @Override
    FieldRow made() {
        return new Row();
    }

    private void remove(FieldRow row) {
        forget(row);
        desk.edit("audit.claims.remove.name", draft -> draft.withoutClaim(row.place()));
    }

    private final class Row extends FieldRow {
        private final Entry<String> words = with(new Entry<>("audit.claim.words", String::strip,
                said -> typed("audit.claim.words", claim -> new Claim(said, claim.figure(), claim.gain())), () -> { }).asWritten());
        private final Choice<String> about = with(new Choice<>("audit.claim.about", List.of(), Function.identity(),
                figure -> typed("audit.claim.about", claim -> new Claim(claim.words(), figure, claim.gain()))));
        private final Entry<Optional<Printed>> gain = with(new Entry<>("audit.claim.gain", this::gain,
                printed -> typed("audit.claim.gain", claim -> new Claim(claim.words(), claim.figure(), printed)), () -> { }));

        Row() {
            super(COLUMNS, "audit.claims.remove", ClaimsCard.this::remove);
            end();
        }

        private Claim claim() {
            return desk.draft().claims().get(place());
        }

        private Optional<Printed> gain(String text) {
            return AuditTyping.gain(text, desk.draft().figures().stream().filter(figure -> figure.name().equals(claim().figure()))
                    .findFirst().flatMap(figure -> figure.before().or(figure::after)));
        }

        private void typed(String key, UnaryOperator<Claim> change) {
            desk.typed(key, field(key), draft -> draft.withClaim(place(), change.apply(draft.claims().get(place()))));
        }

        @Override
        void refresh() {
            words.show(claim().words());
            about.offer(desk.draft().figures().stream().map(FigureDraft::name).toList());
            about.show(claim().figure());
            gain.show(AuditTyping.text(claim().gain()));
        }
    }
}
