package fairpull.ui.frame;

/** The frame around an audit on a display. */
final class AuditWindow extends PaneWindow {
    private final transient OpenAudit audit;

    AuditWindow(OpenAudit audit) {
        super(audit.pane(), AuditMenu.of(audit.actions(), audit.windows().settings()), audit.windows().settings(),
                audit.actions()::close, audit.pane().first());
        this.audit = audit;
        audit.document().listen(this::retitle);
        retitle();
    }

    private void retitle() {
        setTitle(Titles.window(audit.document()));
    }
}
