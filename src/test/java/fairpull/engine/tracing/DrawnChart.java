package fairpull.engine.tracing;

import fairpull.domain.tracing.AxisPoint;
import fairpull.domain.tracing.AxisScale;
import fairpull.domain.tracing.Axes;
import fairpull.domain.tracing.Axis;
import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.PixelPoint;
import fairpull.domain.unit.Units;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.DoubleUnaryOperator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Draws charts of known curves: engine speed from 1000 to 7000 rpm across, power from 0 to 200 kW up. All curves are invented. */
public final class DrawnChart {
    static final double FIRST = 1000;
    static final double LAST = 7000;
    static final double FULL_SCALE = 200;
    /** Where the curves begin and end. */
    static final double FROM = 1500;
    static final double TO = 6500;

    private final BufferedImage image;
    private final Graphics2D g;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;

    /** An empty chart of a size. */
    public DrawnChart(int width, int height, boolean smooth, Color ground) {
        image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, smooth ? RenderingHints.VALUE_ANTIALIAS_ON
                : RenderingHints.VALUE_ANTIALIAS_OFF);
        // otherwise lines are moved to whole pixels before they are drawn, and are no longer where the test says
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(ground);
        g.fillRect(0, 0, width, height);
        left = Math.round(width * 0.1);
        right = Math.round(width * 0.95);
        top = Math.round(height * 0.06);
        bottom = Math.round(height * 0.88);
    }

    /** An invented power curve. */
    public static double power(double rpm) {
        double share = (rpm - 6200) / 4600;
        return 40 + 125 * (1 - share * share) + 4 * Math.sin(rpm / 400);
    }

    Graphics2D pen() {
        return g;
    }

    public double xPx(double rpm) {
        return left + (rpm - FIRST) / (LAST - FIRST) * (right - left);
    }

    public double yPx(double power) {
        return bottom - power / FULL_SCALE * (bottom - top);
    }

    double power(PixelPoint at) {
        return (bottom - at.yPx()) / (bottom - top) * FULL_SCALE;
    }

    double rpm(double xPx) {
        return FIRST + (xPx - left) / (right - left) * (LAST - FIRST);
    }

    /** A frame, and a grid of a colour. */
    public DrawnChart grid(Color colour) {
        g.setStroke(new BasicStroke(1));
        g.setColor(colour);
        for (double rpm = FIRST; rpm <= LAST; rpm += 1000) {
            g.draw(new Line2D.Double(xPx(rpm), top, xPx(rpm), bottom));
        }
        for (double power = 0; power <= FULL_SCALE; power += 25) {
            g.draw(new Line2D.Double(left, yPx(power), right, yPx(power)));
        }
        g.setColor(Color.DARK_GRAY);
        g.draw(new Line2D.Double(left, bottom, right, bottom));
        g.draw(new Line2D.Double(left, top, left, bottom));
        return this;
    }

    /** A curve. */
    public DrawnChart curve(DoubleUnaryOperator power, Color colour, double width, float... dashes) {
        g.setColor(colour);
        g.setStroke(dashes.length == 0 ? new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
        Path2D path = new Path2D.Double();
        for (double rpm = FROM; rpm <= TO; rpm += 5) {
            if (rpm == FROM) {
                path.moveTo(xPx(rpm), yPx(power.applyAsDouble(rpm)));
            } else {
                path.lineTo(xPx(rpm), yPx(power.applyAsDouble(rpm)));
            }
        }
        g.draw(path);
        return this;
    }

    /** A legend in the upper left corner: a swatch and letters of the same colour. */
    public DrawnChart legend(Color first, Color second, double width) {
        g.setStroke(new BasicStroke((float) width));
        for (int entry = 0; entry < 2; entry++) {
            double y = top + 14 + 16 * entry;
            g.setColor(entry == 0 ? first : second);
            g.draw(new Line2D.Double(left + 10, y, left + 34, y));
            g.drawString(entry == 0 ? "part A" : "part B", (float) left + 40, (float) y + 4);
        }
        return this;
    }

    BufferedImage image() {
        return image;
    }

    Picture picture() {
        return picture(image);
    }

    /** {@return the chart as JPEG gives it back} */
    Picture picture(double quality) {
        try {
            return picture(ImageIO.read(new ByteArrayInputStream(jpeg(quality))));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** {@return the chart as a PNG file} */
    public byte[] png() {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** {@return the chart as a JPEG file} */
    public byte[] jpeg(double quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam parameters = writer.getDefaultWriteParam();
        parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        parameters.setCompressionQuality((float) quality);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), parameters);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        writer.dispose();
        return bytes.toByteArray();
    }

    private static Picture picture(BufferedImage image) {
        int width = image.getWidth();
        return Picture.of(width, image.getHeight(), image.getRGB(0, 0, width, image.getHeight(), null, 0, width));
    }

    /** {@return a click on a curve} */
    public PixelPoint on(DoubleUnaryOperator power, double rpm) {
        return new PixelPoint(xPx(rpm), yPx(power.applyAsDouble(rpm)));
    }

    /** {@return the axes, as clicked at their ends to whole pixels} */
    public Axes axes() {
        Axis x = new Axis(new AxisPoint(new PixelPoint(xPx(2000), bottom), 2000), new AxisPoint(new PixelPoint(xPx(6000), bottom), 6000),
                AxisScale.LINEAR, Units.RPM);
        Axis y = new Axis(new AxisPoint(new PixelPoint(left, yPx(0)), 0), new AxisPoint(new PixelPoint(left, yPx(FULL_SCALE)), FULL_SCALE),
                AxisScale.LINEAR, Units.KILOWATT);
        return new Axes(x, y);
    }
}
