package fairpull.ui.page.run;

import fairpull.app.task.Job;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import javax.swing.SwingUtilities;

/** A short tone made by code. Where there is no device it is silent: the words beside the count-down say the same. */
final class Beep {
    private static final float RATE = 22_050;
    private static final double LENGTH_S = 0.35;
    private static final double LOUDNESS = 90;

    private Beep() {
    }

    /** A tone of so many hertz, beside the caller's thread. */
    static void play(double hertz) {
        Job.start(progress -> sound(hertz, AudioSystem::getSourceDataLine), SwingUtilities::invokeLater, share -> { },
                ended -> ended.tell(heard -> { }, fault -> { }));
    }

    /** Where sound goes; throws where there is no device. */
    interface Device {
        SourceDataLine line(AudioFormat format) throws LineUnavailableException;
    }

    /** Plays a tone; {@return whether there was a device} */
    static boolean sound(double hertz, Device device) {
        byte[] wave = wave(hertz);
        AudioFormat format = new AudioFormat(RATE, Byte.SIZE, 1, true, false);
        try (SourceDataLine line = device.line(format)) {
            line.open(format);
            line.start();
            line.write(wave, 0, wave.length);
            line.drain();
            return true;
        } catch (LineUnavailableException | IllegalArgumentException noDevice) {
            return false;
        }
    }

    /** A sine that swells and fades, so that it does not click. */
    static byte[] wave(double hertz) {
        byte[] wave = new byte[(int) (RATE * LENGTH_S)];
        for (int k = 0; k < wave.length; k++) {
            double envelope = Math.sin(Math.PI * k / wave.length);
            wave[k] = (byte) Math.round(LOUDNESS * envelope * Math.sin(2 * Math.PI * hertz * k / RATE));
        }
        return wave;
    }
}
