package fairpull.app.document;

import fairpull.domain.tracing.Picture;
import fairpull.domain.tracing.PictureFile;
import java.util.Optional;

/**
 * A picture that was opened to be traced.
 *
 * @param file its name and hash
 * @param picture its pixels
 * @param lossy whether it is a JPEG
 * @param pasted the PNG of a picture that came from the clipboard and lies in no file yet; empty for one from a file
 */
public record OpenedPicture(PictureFile file, Picture picture, boolean lossy, Optional<byte[]> pasted) {
}
