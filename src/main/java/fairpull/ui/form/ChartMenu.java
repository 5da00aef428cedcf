package fairpull.ui.form;

import fairpull.app.task.Job;
import fairpull.app.usecase.KeepFile;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.DrawingPainter;
import fairpull.report.chart.Palette;
import fairpull.report.chart.Role;
import fairpull.report.chart.SvgWriter;
import fairpull.ui.theme.Look;
import fairpull.ui.theme.Words;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

/** What can be done with a chart by its menu: copied as a picture, saved as SVG or PNG. Pictures to keep are light, as paper is. */
public final class ChartMenu {
    private static final int SCALE = 2;

    private final JComponent place;
    private final Supplier<Optional<Drawing>> drawing;

    private ChartMenu(JComponent place, Supplier<Optional<Drawing>> drawing) {
        this.place = place;
        this.drawing = drawing;
    }

    /** Gives a component the menu of the chart that it shows. */
    public static void attach(JComponent place, Supplier<Optional<Drawing>> drawing) {
        ChartMenu menu = new ChartMenu(place, drawing);
        JPopupMenu popup = new JPopupMenu();
        popup.add(menu.item("chart.copy", menu::copy));
        popup.add(menu.item("chart.svg", shown -> menu.save(".svg", () -> svg(shown))));
        popup.add(menu.item("chart.png", shown -> menu.save(".png", () -> png(shown))));
        place.setComponentPopupMenu(popup);
    }

    private interface Act {
        void on(Drawing shown);
    }

    private JMenuItem item(String key, Act act) {
        JMenuItem item = new JMenuItem(Words.of(key));
        item.setName(key);
        item.addActionListener(event -> drawing.get().ifPresent(act::on));
        return item;
    }

    /** {@return a drawing as an SVG file} */
    public static byte[] svg(Drawing shown) {
        return SvgWriter.file(shown, Palette.LIGHT).getBytes(StandardCharsets.UTF_8);
    }

    /** {@return a drawing as a PNG file} */
    public static byte[] png(Drawing shown) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture(shown), "png", bytes);
        return bytes.toByteArray();
    }

    private static BufferedImage picture(Drawing shown) {
        BufferedImage image = new BufferedImage((int) Math.ceil(shown.width() * SCALE), (int) Math.ceil(shown.height() * SCALE),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.decode(Palette.LIGHT.colour(Role.CARD)));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(SCALE, SCALE);
        DrawingPainter.paint(shown, g, Palette.LIGHT, Look.font(Look.Type.SMALL), Look.font(Look.Type.STRONG));
        g.dispose();
        return image;
    }

    private void copy(Drawing shown) {
        Teller.around(place).onDisk(() -> picture(shown),
                picture -> place.getToolkit().getSystemClipboard().setContents(new Picture(picture), null));
    }

    private void save(String ending, Job.OnDisk<byte[]> making) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle(Words.of("chart.save"));
        if (chooser.showSaveDialog(place) == JFileChooser.APPROVE_OPTION) {
            save(Teller.around(place), KeepFile.named(chooser.getSelectedFile().toPath(), ending), making);
        }
    }

    /** The chart is made into a file beside the window's thread, as it is written. */
    static void save(Teller teller, Path target, Job.OnDisk<byte[]> making) {
        teller.replacing(target, () -> teller.onDisk(() -> {
            KeepFile.bytes(target, making.run());
            return target;
        }, written -> teller.say(Words.of("chart.done", written))));
    }

    /** A picture on the clipboard. */
    private record Picture(BufferedImage image) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.imageFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return DataFlavor.imageFlavor.equals(flavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            if (!isDataFlavorSupported(flavor)) {
                throw new UnsupportedFlavorException(flavor);
            }
            return image;
        }
    }
}
