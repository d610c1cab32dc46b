package org.bayledger.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {

    private static final double INCH = 0.0254;

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = ';',
            value = {
                "13'-6 1/2\"; 162.5",
                "13' 6 1/2\"; 162.5",
                "13'6\"; 162",
                "13'; 156",
                "13 ft 6 in; 162",
                "13 ft 6 1/2 in; 162.5",
                "13ft-6in; 162",
                "13'-0\"; 156",
                "0'-0 1/16\"; 0.0625",
                "0'-0.5\"; 0.5",
                "13.5'; 162",
                "6\"; 6",
                "6 1/2\"; 6.5",
                "1-1/2 in; 1.5",
                "1 1/2 in; 1.5",
                "3/4\"; 0.75",
                "3/4 in; 0.75",
                ".75 in; 0.75",
                "0.75 in; 0.75",
                "-13'-6 1/2\"; -162.5",
                "+13'-6\"; 162",
                "-1 1/2 in; -1.5",
                "-3/4\"; -0.75",
                "13\u2032-6 1/2\u2033; 162.5",
                "13\u2032 6\u2033; 162",
                "13\u2019-6\u201d; 162",
                "13'-6''; 162",
                "  13' - 6\"  ; 162",
                "13 ft; 156",
                "13ft; 156",
                "-5 in; -5",
                "1e1 in; 10",
                "1.5E-1 in; 0.15",
                "25.4 mm; 1",
            })
    void readsLengths(String text, double inches) {
        assertThat(QuantityParser.parse(text, Dimension.LENGTH))
                .isCloseTo(inches * INCH, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "ft",
                "13",
                "1.5",
                "-7",
                "11",
                "13'-12\"",
                "13'-14 1/2\"",
                "13.5'-6\"",
                "13'-6 3/2\"",
                "3/0 in",
                "13'-6",
                "13'-6 1/2",
                "--5 1/2 in",
                "+-5 1/2 in",
                "- 5 1/2 in",
                "-'6\"",
                "13''-6\"",
                "1,5 in",
                "1 000 mm",
                "12 inches",
                "12 IN",
                "12 Mm",
                "0x10 in",
                "NaN in",
                "Infinity ft",
                "1e999 in",
                "1e in",
                "5 5 in",
                "5 in 3",
                "5 in in",
                "12 1",
                "\u0661 in",
                "12 ft\u0000",
                "13'-6\"x",
                "1/2/3 in",
                "6 ft 1/2",
                "'",
                "\"",
                "-",
                "12 in2",
                "12 psf"
            })
    void refusesWhatIsNoLength(String text) {
        assertThatThrownBy(() -> QuantityParser.parse(text, Dimension.LENGTH))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessageNotContainingAny("Exception", "regex");
    }

    @Test
    void readsEveryFormOfTheContract() {
        assertThat(QuantityParser.parse("120 mph", Dimension.SPEED))
                .isCloseTo(53.6448, within(1e-9));
        assertThat(QuantityParser.parse("2.4 kPa", Dimension.PRESSURE))
                .isCloseTo(2400, within(1e-9));
        assertThat(QuantityParser.parse("300 Pa", Dimension.PRESSURE)).isCloseTo(300, within(1e-9));
        assertThat(QuantityParser.parse("-35 psf", Dimension.PRESSURE))
                .isCloseTo(-1675.809, within(1e-3));
        assertThat(QuantityParser.parse("6.5 in4", Dimension.SECOND_MOMENT_OF_AREA))
                .isCloseTo(2.7055043e-6, within(1e-12));
        assertThat(QuantityParser.parse("112 kip*in", Dimension.MOMENT))
                .isCloseTo(12_654.3, within(0.1));
        assertThat(QuantityParser.parse("0.06 cfm/ft2", Dimension.AIR_LEAKAGE))
                .isCloseTo(0.0003048, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"11, 11", "1, 1", "1 1, 1", "111 1, 111", "0.5, 0.5", "-2e1, -20", "21, 21"})
    void readsPureNumbersWithAndWithoutTheirUnit(String text, double number) {
        assertThat(QuantityParser.parse(text, Dimension.NONE)).isEqualTo(number);
    }

    @Test
    void saysWhatIsWrong() {
        assertThatThrownBy(() -> QuantityParser.parse("11", Dimension.LENGTH))
                .hasMessageStartingWith("has no unit");
        assertThatThrownBy(() -> QuantityParser.parse("11 mph", Dimension.LENGTH))
                .hasMessageStartingWith("'mph' is the wrong unit here");
        assertThatThrownBy(() -> QuantityParser.parse("11 furlong", Dimension.LENGTH))
                .hasMessageStartingWith("'furlong' is not a known unit");
        assertThatThrownBy(() -> QuantityParser.parse("1e400 ft", Dimension.LENGTH))
                .hasMessage("must be a finite number");
        assertThatThrownBy(() -> QuantityParser.parse("9".repeat(65) + " ft", Dimension.LENGTH))
                .hasMessage("is too long for a quantity");
        assertThatThrownBy(() -> QuantityParser.parse(Double.NaN, "ft", Dimension.LENGTH))
                .hasMessage("must be a finite number");
    }

    @Test
    void feetAndInchesAreForLengthsAlone() {
        assertThatThrownBy(() -> QuantityParser.parse("13'", Dimension.PRESSURE))
                .isInstanceOf(QuantityFormatException.class);
        assertThat(QuantityParser.parse("13'", Dimension.DISTANCE))
                .isCloseTo(13 * 0.3048, within(1e-12));
    }

    @Test
    void whatFeetInchesWritesIsReadBack() {
        java.util.Random random = new java.util.Random(7);
        for (int i = 0; i < 2000; i++) {
            double sixteenths = random.nextInt(20_000) - 10_000;
            double metres = sixteenths / 16 * INCH;
            String text = FeetInches.format(metres, UnitSystem.US);
            assertThat(QuantityParser.parse(text, Dimension.LENGTH))
                    .as(text)
                    .isCloseTo(metres, within(1e-9));
        }
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = ';',
            value = {
                "15; 1'-3\"", "31.5; 2'-7 1/2\"", "9.1875; 9 3/16\"", "0; 0\"", "0.5; 1/2\"",
                        "12; 1'-0\"",
                "12.5; 1'-0 1/2\"", "-31.5; -2'-7 1/2\"", "0.02; 0\"", "-0.02; 0\"",
                        "11.99; 1'-0\"", "0.04; 1/16\""
            })
    void writesFeetAndInches(double inches, String text) {
        assertThat(FeetInches.format(inches * INCH, UnitSystem.US)).isEqualTo(text);
    }

    @Test
    void writesWholeMillimetres() {
        assertThat(FeetInches.format(0.3937, UnitSystem.SI)).isEqualTo("394 mm");
        assertThat(FeetInches.format(-0.0004, UnitSystem.SI)).isEqualTo("0 mm");
    }
}
