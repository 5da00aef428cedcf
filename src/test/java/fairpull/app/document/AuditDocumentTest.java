package fairpull.app.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairpull.domain.audit.Printed;
import fairpull.domain.audit.Publication;
import fairpull.domain.audit.PublicationDraft;
import org.junit.jupiter.api.Test;

class AuditDocumentTest {
    private final AuditDocument document = AuditDocument.blank();

    /** One place for file and window: what a publication cannot be is refused while it is typed, and leaves the draft alone. */
    @Test
    void anEditThatNoPublicationCanHoldIsRefused() {
        figure("200.0 hp", "204.0 hp");
        claim("5 more", "5 hp");
        PublicationDraft typed = document.draft();

        assertThatThrownBy(() -> claim("5 more", "5 N·m")).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("give the gain in hp or in percent");
        assertThatThrownBy(() -> document.edit("title", "title", draft -> draft.titled("x".repeat(301)))).hasMessageContaining("at most 300");
        assertThat(document.draft()).isEqualTo(typed);
        assertThat(document.draft().publication()).isPresent();
    }

    @Test
    void aClaimWithoutWordsIsNotAuditedYet() {
        figure("200.0 hp", "204.0 hp");
        claim("", "5 hp");

        assertThat(document.draft().publication().orElseThrow().claims()).isEmpty();
    }

    private void figure(String before, String after) {
        document.edit("before", "before", draft -> draft.withFigure(0, draft.figures().get(0).withBefore(Printed.parse(before))
                .withAfter(Printed.parse(after))));
    }

    private void claim(String words, String gain) {
        document.edit("claim", "claim", draft -> draft.withClaim(0, new Publication.Claim(words, draft.figures().get(0).name(),
                Printed.parse(gain))));
    }
}
