package fairpull.ui.page.audit;

import fairpull.app.document.AuditDocument;
import fairpull.app.task.Job;
import fairpull.app.task.Latest;
import fairpull.app.usecase.auditing.AuditTyping;
import fairpull.app.usecase.auditing.AuditView;
import fairpull.domain.audit.Publication;
import fairpull.ui.form.FaultWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** How the claims of a publication stand: audited beside the window's thread, anew after every edit. */
public final class Auditing {
    private final AuditDocument document;
    private final Latest<AuditView> latest = new Latest<>(SwingUtilities::invokeLater);
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Publication> asked = Optional.empty();
    private Path askedIn = Path.of("");
    private Optional<AuditView> view = Optional.empty();
    private String trouble = "";

    /** The audit of a document. */
    public Auditing(AuditDocument document) {
        this.document = document;
        document.listen(this::ask);
        // what a publication shows is reckoned once the window is made
        SwingUtilities.invokeLater(this::ask);
    }

    /** {@return the answer; empty while there is nothing to audit, or it cannot be} */
    public Optional<AuditView> view() {
        return view;
    }

    /** {@return why there is no answer; empty where there is one, or none is expected yet} */
    public String trouble() {
        return trouble;
    }

    /** {@return what is still lacking, in sentences} */
    public List<String> lacking() {
        return AuditTyping.lacking(document.draft());
    }

    /** Has {@code listener} called whenever another answer is there. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    /** Stops what is under way. */
    public void end() {
        latest.stop();
    }

    private void ask() {
        Optional<Publication> publication = document.draft().publication();
        Path folder = document.folder();
        if (publication.isEmpty()) {
            latest.stop();
            answered(Optional.empty(), "");
        } else if (!publication.equals(asked) || !folder.equals(askedIn)) {
            latest.ask(Job.onDisk(() -> AuditView.of(publication.get(), folder)), ended -> ended.tell(
                    answer -> answered(Optional.of(answer), ""), fault -> answered(Optional.empty(), FaultWords.of(fault))));
        }
        asked = publication;
        askedIn = folder;
    }

    private void answered(Optional<AuditView> answer, String fault) {
        view = answer;
        trouble = fault;
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
