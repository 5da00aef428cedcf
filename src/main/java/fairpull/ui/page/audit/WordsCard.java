package fairpull.ui.page.audit;

import fairpull.domain.audit.PublicationDraft;
import fairpull.ui.form.Card;
import fairpull.ui.form.Entry;
import fairpull.ui.theme.Words;
import java.util.function.BiFunction;

/** What was published in words: what it is called, where it stands, what was changed. */
final class WordsCard extends Card {
    private final AuditDesk desk;
    private final Entry<String> title;
    private final Entry<String> changed;
    private final Entry<String> source;
    private final Entry<String> remark;

    WordsCard(AuditDesk desk) {
        super(Words.of("audit.words.head"));
        this.desk = desk;
        title = entry("audit.title", PublicationDraft::titled);
        changed = entry("audit.changed", PublicationDraft::changing);
        source = entry("audit.source", PublicationDraft::from);
        remark = entry("audit.remark", PublicationDraft::remarked);
    }

    private Entry<String> entry(String key, BiFunction<PublicationDraft, String, PublicationDraft> with) {
        Entry<String> entry = new Entry<>(key, String::strip, words -> desk.typed(key, key, draft -> with.apply(draft, words)), () -> { })
                .asWritten();
        entry.addTo(this);
        return entry;
    }

    void refresh() {
        PublicationDraft draft = desk.draft();
        title.show(draft.title());
        changed.show(draft.changed());
        source.show(draft.source());
        remark.show(draft.remark());
    }
}
