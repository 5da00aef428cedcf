package fairpull.ui.page.audit;

import fairpull.domain.audit.Publication.Values;
import fairpull.domain.audit.ValuesDraft.Side;
import fairpull.report.chart.Role;
import fairpull.ui.form.Input;
import fairpull.ui.form.Keys;
import fairpull.ui.theme.LocalNumbers;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Component;
import java.util.Arrays;
import javax.swing.DefaultCellEditor;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellEditor;

/** A small table of two columns of values. What is not understood stays in its cell, and is told beneath the table. */
final class ValuesTable extends JTable implements Input {
    private static final int FEWEST_ROWS = 4;
    private static final int PAUSE_MS = 300;
    private static final int NUMBERS = 44;

    private final transient ValuesTyped typed;
    private final Model model = new Model();
    private final JTextField editing = new JTextField();
    private final Timer pause = new Timer(PAUSE_MS, event -> sendWhatIsUnderstood());

    ValuesTable(ValuesTyped typed) {
        this.typed = typed;
        setModel(model);
        setName("audit.values");
        getAccessibleContext().setAccessibleName(Words.of("audit.values"));
        setToolTipText(Words.tip(Words.of("audit.values.tip")));
        getTableHeader().setReorderingAllowed(false);
        ((JLabel) getTableHeader().getDefaultRenderer()).setHorizontalAlignment(SwingConstants.RIGHT);
        setCellSelectionEnabled(true);
        setShowGrid(true);
        setSurrendersFocusOnKeystroke(true);
        putClientProperty("terminateEditOnFocusLost", true);
        getColumnModel().getColumn(0).setMaxWidth(NUMBERS);
        setDefaultRenderer(Object.class, new Cell());
        pause.setRepeats(false);
        setTransferHandler(new ValuesTransfer());
        editor();
        Keys.bind(this, "DELETE", this::clearChosen);
        found();
    }

    private void editor() {
        editing.setName("audit.values.cell");
        editing.setHorizontalAlignment(SwingConstants.RIGHT);
        editing.getAccessibleContext().setAccessibleName(Words.of("audit.values"));
        editing.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                pause.restart();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                pause.restart();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                pause.restart();
            }
        });
        // the key that begins a cell comes before the focus, and would be selected with what stood there
        editing.putClientProperty("JTextField.selectAllOnFocusPolicy", "never");
        setDefaultEditor(Object.class, new DefaultCellEditor(editing));
        Keys.bind(editing, "ENTER", this::goDown);
    }

    /** Enter ends a cell and goes to the one beneath it. */
    private void goDown() {
        int row = getEditingRow();
        int column = getEditingColumn();
        flush();
        changeSelection(Math.min(row + 1, getRowCount() - 1), column, false, false);
        requestFocusInWindow();
    }

    /** What is typed over a value takes its place. */
    @Override
    public Component prepareEditor(TableCellEditor editor, int row, int column) {
        Component prepared = super.prepareEditor(editor, row, column);
        editing.selectAll();
        return prepared;
    }

    /** Puts what was pasted where a cell is chosen, else from the top. */
    void paste(String text) {
        flush();
        typed.paste(text, Math.max(0, getSelectedRow()), getSelectedColumn() == 2 ? Side.AFTER : Side.BEFORE);
    }

    private void clearChosen() {
        if (!isEditing()) {
            typed.clear(getSelectedRows(), Arrays.stream(getSelectedColumns()).filter(column -> column > 0)
                    .mapToObj(ValuesTable::side).toList());
        }
    }

    private static Side side(int column) {
        return column == 1 ? Side.BEFORE : Side.AFTER;
    }

    /** What is typed is safe a moment later, whether or not its cell was left; what is not understood yet is still being typed. */
    private void sendWhatIsUnderstood() {
        if (isEditing() && typed.reads(LocalNumbers.typed(editing.getText()))) {
            setValueAt(editing.getText(), getEditingRow(), getEditingColumn());
        }
    }

    /** Shows the values of the figure at hand; what is being typed stays. */
    void refresh() {
        model.refresh();
    }

    @Override
    public String name() {
        return typed.wrong().map(cell -> cell.words()).orElse(Words.of("audit.values"));
    }

    @Override
    public String wrong() {
        return typed.wrong().map(ValuesTyped.Wrong::why).orElse("");
    }

    @Override
    public JComponent field() {
        return this;
    }

    @Override
    public void flush() {
        if (isEditing()) {
            getCellEditor().stopCellEditing();
        }
        pause.stop();
    }

    @Override
    public boolean isAside() {
        return false;
    }

    private final class Model extends AbstractTableModel {
        private int rows = FEWEST_ROWS;

        /** Rows come and go at the end, so that a cell that is being typed in stays where it is. */
        void refresh() {
            int before = rows;
            rows = Math.min(Values.MOST, Math.max(FEWEST_ROWS, typed.rows() + 1));
            if (rows > before) {
                fireTableRowsInserted(before, rows - 1);
            } else if (rows < before) {
                fireTableRowsDeleted(rows, before - 1);
            }
            fireTableRowsUpdated(0, rows - 1);
        }

        @Override
        public int getRowCount() {
            return rows;
        }

        @Override
        public int getColumnCount() {
            return 3;
        }

        @Override
        public String getColumnName(int column) {
            return column == 0 ? "" : Words.of(column == 1 ? "audit.figure.before" : "audit.figure.after");
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return column > 0;
        }

        @Override
        public Object getValueAt(int row, int column) {
            return column == 0 ? String.valueOf(row + 1) : typed.text(row, side(column));
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            typed.type(String.valueOf(value), row, side(column));
        }
    }

    /** Figures stand to the right; what is not understood stands in the colour of complaints. */
    private final class Cell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            Component cell = super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            setHorizontalAlignment(RIGHT);
            boolean isWrong = column > 0 && typed.isWrong(row, side(column));
            if (!selected) {
                cell.setForeground(Look.colour(isWrong ? Role.B : column == 0 ? Role.SOFT : Role.INK));
            }
            setFont(Look.font(isWrong ? Look.Type.STRONG : Look.Type.BODY));
            return cell;
        }
    }
}
