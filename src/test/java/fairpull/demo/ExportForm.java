package fairpull.demo;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;

/** How a rig's software writes a pull. Power is always torque × speed as printed, so that the columns agree within their rounding. */
enum ExportForm {
    /** Commas, byte-order mark, units in round brackets, a column that is never filled, a comma too many, cells left blank. */
    COMMAS {
        @Override
        byte[] write(List<Sweep.Reading> readings, double intakeAirC, SplittableRandom noise) {
            StringBuilder text = new StringBuilder("\ufeffTime (s),Engine Speed (rpm),Roller Speed (km/h),Throttle (%),")
                    .append("Torque (lb·ft),Power (hp),Intake Air (°C),Marker,\r\n");
            int row = 0;
            for (Sweep.Reading reading : readings) {
                double rpm = Decimals.asPrinted(reading.engineRpm(), 0);
                boolean slowChannelsToo = row++ % 8 == 0;
                cell(text, Decimals.fixed(reading.seconds(), 3), true);
                cell(text, Decimals.fixed(rpm, 0), true);
                cell(text, Decimals.fixed(reading.rollerKmh(), 1), noise.nextDouble() > BLANK);
                cell(text, Decimals.fixed(100 * reading.throttle(), 1), noise.nextDouble() > BLANK);
                cell(text, Decimals.fixed(reading.torqueNm() / NM_IN_LBFT, 2), noise.nextDouble() > BLANK);
                cell(text, Decimals.fixed(TorqueCurve.powerW(reading.torqueNm(), rpm) / W_IN_HP, 2), noise.nextDouble() > BLANK);
                cell(text, Decimals.fixed(intakeAirC + 0.1 * noise.nextGaussian(), 1), slowChannelsToo);
                text.append(",\r\n");
            }
            return text.toString().getBytes(StandardCharsets.UTF_8);
        }

        private void cell(StringBuilder text, String content, boolean filled) {
            text.append(filled ? content : "").append(',');
        }
    },

    /** Semicolons, every cell in quotation marks, decimal commas, units in square brackets, Latin-1. */
    QUOTED {
        @Override
        byte[] write(List<Sweep.Reading> readings, double intakeAirC, SplittableRandom noise) {
            StringBuilder text = new StringBuilder("\"Time [s]\";\"Engine Speed [1/min]\";\"Throttle [%]\";")
                    .append("\"Power [kW]\";\"Torque [Nm]\";\"Intake Air [°C]\"\r\n");
            for (Sweep.Reading reading : readings) {
                double rpm = Decimals.asPrinted(reading.engineRpm(), 1);
                text.append(String.join(";",
                        cell(reading.seconds(), 3),
                        cell(rpm, 1),
                        cell(100 * reading.throttle(), 1),
                        cell(TorqueCurve.powerW(reading.torqueNm(), rpm) / 1000, 3),
                        cell(reading.torqueNm(), 2),
                        cell(intakeAirC + 0.1 * noise.nextGaussian(), 1))).append("\r\n");
            }
            return text.toString().getBytes(StandardCharsets.ISO_8859_1);
        }

        private String cell(double value, int places) {
            return '"' + Decimals.fixed(value, places).replace('.', ',') + '"';
        }
    };

    private static final double BLANK = 0.006;
    private static final double NM_IN_LBFT = 0.45359237 * 9.80665 * 0.3048;
    private static final double W_IN_HP = 550 * NM_IN_LBFT;

    /** {@return the bytes of one export} */
    abstract byte[] write(List<Sweep.Reading> readings, double intakeAirC, SplittableRandom noise);
}
