package fairpull.ui.page.tracing;

import fairpull.app.document.OpenedPicture;
import fairpull.app.document.Settings;
import fairpull.app.task.Job;
import fairpull.app.usecase.UsageException;
import fairpull.app.usecase.tracing.TraceChart;
import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.Tracing;
import fairpull.ui.form.FaultWords;
import fairpull.ui.theme.Words;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.swing.JFileChooser;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Opens pictures and saves traces, beside the window's thread. */
final class TracingFiles {
    private static final String FOLDER = "tracing.folder";

    private final Component place;
    private final Bench bench;
    private final Settings settings;
    private final Consumer<String> saying;
    private BiConsumer<String, Map<String, Runnable>> asking = (question, answers) -> answers.values().iterator().next().run();
    private List<Path> own = List.of();

    TracingFiles(Component place, Bench bench, Settings settings, Consumer<String> saying) {
        this.place = place;
        this.bench = bench;
        this.settings = settings;
        this.saying = saying;
    }

    /** Has questions asked in place; the answers are keys of the words with what follows from them. */
    void onAsk(BiConsumer<String, Map<String, Runnable>> asker) {
        asking = asker;
    }

    private <R> void onDisk(Job.OnDisk<R> work, Consumer<R> then) {
        saying.accept("");
        Job.start(Job.onDisk(work), SwingUtilities::invokeLater, share -> { },
                ended -> ended.tell(then, fault -> saying.accept(FaultWords.of(fault))));
    }

    private JFileChooser chooser(String title) {
        JFileChooser chooser = new JFileChooser(settings.find(FOLDER).orElse(null));
        chooser.setDialogTitle(Words.of(title));
        return chooser;
    }

    void choose() {
        JFileChooser chooser = chooser("tracing.open");
        chooser.setFileFilter(new FileNameExtensionFilter(Words.of("tracing.open.kinds"), "png", "jpg", "jpeg"));
        if (chooser.showOpenDialog(place) == JFileChooser.APPROVE_OPTION) {
            open(chooser.getSelectedFile().toPath());
        }
    }

    /** Opens a picture; what was traced from another one and not saved is asked about first. */
    void open(Path file) {
        unlessChanged(() -> onDisk(() -> TraceChart.open(file), opened -> {
            File folder = file.toAbsolutePath().toFile().getParentFile();
            if (folder != null) {
                settings.set(FOLDER, folder.toString());
            }
            show(opened);
        }));
    }

    /** Opens a picture from the clipboard or from another program. */
    void open(Image image) {
        unlessChanged(() -> onDisk(() -> TraceChart.pasted(png(image)), this::show));
    }

    private void show(OpenedPicture opened) {
        own = List.of();
        bench.say(List.of());
        bench.take(Tool.X_FIRST);
        bench.document().open(opened);
    }

    private void unlessChanged(Runnable then) {
        if (!bench.document().isChanged()) {
            then.run();
            return;
        }
        asking.accept(Words.of("tracing.drop.question"), Map.of("tracing.drop.yes", then));
    }

    private static byte[] png(Image image) throws IOException {
        int width = image.getWidth(null);
        int height = image.getHeight(null);
        if (width < 1 || height < 1 || (long) width * height > Picture.MOST_PIXELS) {
            throw new UsageException("", Words.of("tracing.pasted.size", Picture.MOST_PIXELS / 1_000_000));
        }
        BufferedImage flat = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = flat.createGraphics();
        g.drawImage(image, 0, 0, Color.WHITE, null);
        g.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(flat, "png", bytes);
        return bytes.toByteArray();
    }

    void save(Runnable then) {
        if (bench.document().tracing().isEmpty()) {
            saying.accept(Words.of("tracing.nothing"));
            return;
        }
        try {
            TraceChart.trace(bench.document().tracing().get());
        } catch (UsageException lacking) {
            saying.accept(lacking.problem());
            return;
        }
        JFileChooser chooser = chooser("tracing.save");
        String name = bench.document().tracing().get().file().name().replaceFirst("\\.[^.]*$", "");
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), own.isEmpty() ? name + "-trace.json"
                : own.get(0).getFileName().toString()));
        if (chooser.showSaveDialog(place) == JFileChooser.APPROVE_OPTION) {
            save(chooser.getSelectedFile().toPath(), then);
        }
    }

    void save(Path target, Runnable then) {
        Tracing tracing = bench.document().tracing().orElseThrow();
        OpenedPicture opened = bench.document().opened().orElseThrow();
        List<Path> before = own;
        onDisk(() -> TraceChart.save(opened, tracing, target, before), written -> {
            own = written;
            bench.document().savedAs(tracing);
            String names = String.join(", ", written.stream().map(file -> file.getFileName().toString()).toList());
            saying.accept(Words.of("tracing.saved", names));
            then.run();
        });
    }
}
