package fairpull.report.write;

import fairpull.report.chart.Bounds;
import fairpull.report.chart.Drawing;
import fairpull.report.chart.HatchLines;
import fairpull.report.chart.Palette;
import fairpull.report.chart.Point;
import fairpull.report.chart.Role;
import fairpull.report.chart.Shape;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDFormContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;

/** A drawing in the language of PDF, as lines and letters: sharp at any size, its text can be searched. */
final class PdfChart implements Shape.Cases<PdfChart.Painted> {
    /** How far the handles of a Bézier curve stand off for a quarter of a circle: 4/3 · (√2 − 1). */
    private static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);
    private static final float HATCH_OPACITY = 0.35f;

    private final Drawing drawing;
    private final PDFormContentStream out;
    private final PdfFonts fonts;

    /** One shape, to be put into the stream. */
    interface Painted {
        void paint() throws IOException;
    }

    private PdfChart(Drawing drawing, PDFormContentStream out, PdfFonts fonts) {
        this.drawing = drawing;
        this.out = out;
        this.fonts = fonts;
    }

    /** {@return the drawing as a form that can be placed on a page, one point a unit} */
    static PDFormXObject form(PDDocument document, Drawing drawing, PdfFonts fonts) {
        try {
            PDFormXObject form = new PDFormXObject(document);
            form.setBBox(new PDRectangle((float) drawing.width(), (float) drawing.height()));
            form.setResources(new PDResources());
            try (PDFormContentStream out = new PDFormContentStream(form)) {
                PdfChart chart = new PdfChart(drawing, out, fonts);
                for (Shape shape : drawing.shapes()) {
                    shape.match(chart).paint();
                }
            }
            return form;
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }

    @Override
    public Painted line(Shape.Line line) {
        return () -> stroke(List.of(line.from(), line.to()), line.role(), line.width(), line.dash());
    }

    @Override
    public Painted path(Shape.Path path) {
        return () -> stroke(path.points(), path.role(), path.width(), path.dash());
    }

    @Override
    public Painted area(Shape.Area area) {
        return () -> {
            fillWith(area.role());
            rectangle(area.bounds(), area.radius());
            out.fill();
        };
    }

    @Override
    public Painted frame(Shape.Frame frame) {
        return () -> {
            strokeWith(frame.role(), frame.width(), Shape.Dash.SOLID);
            rectangle(frame.bounds(), frame.radius());
            out.stroke();
        };
    }

    @Override
    public Painted hatch(Shape.Hatch hatch) {
        return () -> {
            PDExtendedGraphicsState faint = new PDExtendedGraphicsState();
            faint.setStrokingAlphaConstant(HATCH_OPACITY);
            out.saveGraphicsState();
            out.setGraphicsStateParameters(faint);
            for (Shape.Line line : HatchLines.of(hatch)) {
                stroke(List.of(line.from(), line.to()), line.role(), line.width(), line.dash());
            }
            out.restoreGraphicsState();
        };
    }

    @Override
    public Painted disc(Shape.Disc disc) {
        return () -> {
            fillWith(disc.role());
            rectangle(around(disc.centre(), disc.radius()), disc.radius());
            out.fill();
        };
    }

    @Override
    public Painted ring(Shape.Ring ring) {
        return () -> {
            fillWith(Role.CARD);
            strokeWith(ring.role(), ring.width(), Shape.Dash.SOLID);
            rectangle(around(ring.centre(), ring.radius()), ring.radius());
            out.fillAndStroke();
        };
    }

    @Override
    public Painted polygon(Shape.Polygon polygon) {
        return () -> {
            fillWith(polygon.role());
            through(polygon.corners());
            out.closePath();
            out.fill();
        };
    }

    @Override
    public Painted words(Shape.Words words) {
        return () -> {
            List<PdfFonts.Run> runs = fonts.runs(words.text(), words.type().bold());
            double width = 0;
            for (PdfFonts.Run run : runs) {
                width += run.width(words.type().size());
            }
            double x = switch (words.anchor()) {
                case START -> words.at().x();
                case MIDDLE -> words.at().x() - width / 2;
                case END -> words.at().x() - width;
            };
            fillWith(words.role());
            out.beginText();
            out.newLineAtOffset((float) x, y(words.at().y()));
            for (PdfFonts.Run run : runs) {
                out.setFont(run.font(), (float) words.type().size());
                out.showText(run.text());
            }
            out.endText();
        };
    }

    private void stroke(List<Point> points, Role role, double width, Shape.Dash dash) throws IOException {
        strokeWith(role, width, dash);
        through(points);
        out.stroke();
    }

    private void through(List<Point> points) throws IOException {
        out.moveTo((float) points.get(0).x(), y(points.get(0).y()));
        for (Point point : points.subList(1, points.size())) {
            out.lineTo((float) point.x(), y(point.y()));
        }
    }

    private void strokeWith(Role role, double width, Shape.Dash dash) throws IOException {
        float[] rgb = rgb(role);
        out.setStrokingColor(rgb[0], rgb[1], rgb[2]);
        out.setLineWidth((float) width);
        out.setLineCapStyle(0);
        out.setLineJoinStyle(1);
        out.setLineDashPattern(dash == Shape.Dash.SOLID ? new float[0] : new float[] {(float) dash.on(), (float) dash.off()}, 0);
    }

    private void fillWith(Role role) throws IOException {
        float[] rgb = rgb(role);
        out.setNonStrokingColor(rgb[0], rgb[1], rgb[2]);
    }

    private static float[] rgb(Role role) {
        int rgb = Integer.parseInt(Palette.PRINT.colour(role).substring(1), 16);
        return new float[] {(rgb >> 16 & 255) / 255f, (rgb >> 8 & 255) / 255f, (rgb & 255) / 255f};
    }

    private static Bounds around(Point centre, double radius) {
        return new Bounds(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius);
    }

    /** With a radius of half its sides a circle. */
    private void rectangle(Bounds bounds, double radius) throws IOException {
        if (radius == 0) {
            out.addRect((float) bounds.x(), y(bounds.bottom()), (float) bounds.width(), (float) bounds.height());
            return;
        }
        double left = bounds.x();
        double right = bounds.right();
        double top = bounds.y();
        double bottom = bounds.bottom();
        double off = radius * (1 - QUARTER);
        out.moveTo((float) (left + radius), y(top));
        out.lineTo((float) (right - radius), y(top));
        curve(new Point(right - off, top), new Point(right, top + off), new Point(right, top + radius));
        out.lineTo((float) right, y(bottom - radius));
        curve(new Point(right, bottom - off), new Point(right - off, bottom), new Point(right - radius, bottom));
        out.lineTo((float) (left + radius), y(bottom));
        curve(new Point(left + off, bottom), new Point(left, bottom - off), new Point(left, bottom - radius));
        out.lineTo((float) left, y(top + radius));
        curve(new Point(left, top + off), new Point(left + off, top), new Point(left + radius, top));
        out.closePath();
    }

    private void curve(Point first, Point second, Point to) throws IOException {
        out.curveTo((float) first.x(), y(first.y()), (float) second.x(), y(second.y()), (float) to.x(), y(to.y()));
    }

    /** PDF counts upwards. */
    private float y(double downwards) {
        return (float) (drawing.height() - downwards);
    }
}
