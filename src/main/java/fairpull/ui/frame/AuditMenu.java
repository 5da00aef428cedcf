package fairpull.ui.frame;

import fairpull.app.document.AuditDocument;
import fairpull.app.document.Settings;
import fairpull.app.usecase.auditing.KeepAudit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;

/** The menus of the window of an audit: everything that is not a page, each with its key. */
final class AuditMenu {
    private final AuditActions actions;
    private final MenuMaker maker;

    private AuditMenu(AuditActions actions) {
        this.actions = actions;
        maker = new MenuMaker(actions::flushed);
    }

    static JMenuBar of(AuditActions actions, Settings settings) {
        AuditMenu menu = new AuditMenu(actions);
        AuditDocument document = actions.document();
        JMenuBar bar = new JMenuBar();
        bar.add(menu.audit());
        bar.add(menu.maker.edit(document::undoLabel, document::redoLabel, document::listen, actions::undo, actions::redo));
        bar.add(menu.maker.view(settings));
        bar.add(menu.help());
        return bar;
    }

    private JMenu audit() {
        JMenu menu = MenuMaker.menu("menu.audits");
        menu.add(maker.item("menu.audit.new", KeyEvent.VK_N, actions::fresh));
        menu.add(maker.item("menu.audit.open", KeyEvent.VK_O, actions::choose));
        JMenu examples = MenuMaker.menu("menu.audit.examples");
        KeepAudit.EXAMPLES.forEach(name -> examples.add(maker.plain("audit.example." + name, () -> actions.example(name))));
        menu.add(examples);
        menu.addSeparator();
        menu.add(maker.item("menu.audit.save", KeyEvent.VK_S, actions::save));
        JMenuItem saveAs = maker.plain("menu.audit.saveAs", actions::saveAs);
        saveAs.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_S, MenuMaker.mask() | InputEvent.SHIFT_DOWN_MASK));
        menu.add(saveAs);
        menu.addSeparator();
        menu.add(maker.item("menu.audit.repeat", KeyEvent.VK_R, actions::repeat));
        menu.add(maker.item("menu.audit.html", KeyEvent.VK_E, () -> actions.export(AuditExport.HTML)));
        menu.add(maker.item("menu.audit.pdf", KeyEvent.VK_P, () -> actions.export(AuditExport.PDF)));
        menu.add(maker.item("menu.audit.json", KeyEvent.VK_J, () -> actions.export(AuditExport.JSON)));
        menu.addSeparator();
        menu.add(maker.item("menu.close", KeyEvent.VK_W, actions::close));
        return menu;
    }

    private JMenu help() {
        JMenu menu = MenuMaker.menu("menu.help");
        JMenuItem words = maker.plain("menu.words", HelpView::open);
        words.setAccelerator(KeyStroke.getKeyStroke(KeyEvent.VK_F1, 0));
        menu.add(words);
        return menu;
    }
}
