package fairpull.domain.pull;

import fairpull.domain.plan.Scatter;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * The seal of a plan.
 *
 * @param planSha256 SHA-256 of the canonical plan
 * @param code its first 50 bits as ten characters, parted 4-4-2, printed on sheet and report
 * @param at when it was sealed
 * @param programVersion by which version of the program
 * @param pullScatter the record figures used, if any
 * @param refitScatter the record figures used, if any
 */
public record Seal(String planSha256, String code, OffsetDateTime at, String programVersion, Optional<Scatter> pullScatter,
        Optional<Scatter> refitScatter) {
}
