package fairpull.ui.page.audit;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.Arrays;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Cells from and to the clipboard, as spreadsheets have them: a line a row, a tab between columns. */
final class ValuesTransfer extends TransferHandler {
    @Override
    public boolean canImport(TransferSupport support) {
        return support.getComponent() instanceof ValuesTable && support.isDataFlavorSupported(DataFlavor.stringFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        try {
            ((ValuesTable) support.getComponent()).paste((String) support.getTransferable().getTransferData(DataFlavor.stringFlavor));
            return true;
        } catch (UnsupportedFlavorException | IOException nothingToPaste) {
            return false;
        }
    }

    @Override
    public int getSourceActions(JComponent component) {
        return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent component) {
        ValuesTable table = (ValuesTable) component;
        return new StringSelection(Arrays.stream(table.getSelectedRows())
                .mapToObj(row -> Arrays.stream(table.getSelectedColumns()).filter(column -> column > 0)
                        .mapToObj(column -> String.valueOf(table.getValueAt(row, column))).collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n")));
    }
}
