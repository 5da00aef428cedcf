package fairpull.ui;

import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;

/** A screen that is none, with so many dots to a pixel: Swing asks it how wide letters are. */
final class ScaledScreen extends GraphicsConfiguration {
    private final GraphicsConfiguration picture = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics()
            .getDeviceConfiguration();
    private final int scale;

    ScaledScreen(int scale) {
        this.scale = scale;
    }

    @Override
    public GraphicsDevice getDevice() {
        return picture.getDevice();
    }

    @Override
    public ColorModel getColorModel() {
        return picture.getColorModel();
    }

    @Override
    public ColorModel getColorModel(int transparency) {
        return picture.getColorModel(transparency);
    }

    @Override
    public AffineTransform getDefaultTransform() {
        return AffineTransform.getScaleInstance(scale, scale);
    }

    @Override
    public AffineTransform getNormalizingTransform() {
        return picture.getNormalizingTransform();
    }

    @Override
    public Rectangle getBounds() {
        return picture.getBounds();
    }
}
