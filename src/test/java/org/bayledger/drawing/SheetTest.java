package org.bayledger.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.assertj.core.data.Offset;
import org.bayledger.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** What drawings are made of. */
class SheetTest {

    @Test
    void takesOutWhatXmlAndASheetCannotHold() {
        assertThat(Words.clean("a\u0000b\tc\r\n d\ud800e\uffff")).isEqualTo("a b c d e");
        assertThat(Words.clean("\u202eevil\u2066\u200f")).isEqualTo("evil");
        assertThat(Words.clean("\ud83c\udfd7 \u0645\u0628\u0646\u0649"))
                .isEqualTo("\ud83c\udfd7 \u0645\u0628\u0646\u0649");
        assertThat(Words.clean(Words.together("13.5 ft"))).isEqualTo("13.5\u00a0ft");
    }

    @Test
    void cutsAndWrapsWordsToAWidth() {
        assertThat(Words.fit("short", 7, 100)).isEqualTo("short");
        String cut = Words.fit("\ud83c\udfd7".repeat(50), 7, 100);
        assertThat(cut).endsWith("\u2026");
        assertThat(Words.width(cut, 7)).isLessThanOrEqualTo(100);
        assertThat(cut.codePointAt(cut.offsetByCodePoints(cut.length(), -2))).isEqualTo(0x1f3d7);
        assertThat(Words.wrap("one two three four " + "x".repeat(99), 7, 50))
                .hasSizeGreaterThan(2)
                .allSatisfy(line -> assertThat(Words.width(line, 7)).isLessThanOrEqualTo(50));
    }

    @Test
    void spreadsThingsWithoutOverlapsAndInsideTheirLine() {
        Random random = new Random(7);
        for (int run = 0; run < 500; run++) {
            int count = 1 + random.nextInt(12);
            double[] middles = random.doubles(count, -20, 220).sorted().toArray();
            double[] lengths = random.doubles(count, 1, 16).toArray();
            double[] starts = Spread.along(middles, lengths, 0, 200);
            assertThat(starts).hasSize(count);
            double free = 0;
            for (int i = 0; i < count; i++) {
                assertThat(starts[i]).isGreaterThanOrEqualTo(free - 1e-9);
                free = starts[i] + lengths[i];
            }
            assertThat(free).isLessThanOrEqualTo(200 + 1e-9);
        }
        assertThat(Spread.along(new double[] {1, 2}, new double[] {6, 6}, 0, 10)).isEmpty();
        assertThat(Spread.along(new double[] {50}, new double[] {10}, 0, 100)).containsExactly(45);
    }

    /** 1:100 on paper: a metre is a centimetre, 28.35 points. */
    @Test
    void drawsToARoundScale() {
        Scale scale = Scale.fitting(new Box(0, 0, 284, 290), 0, 10, 0, 10, 10);
        assertThat(scale.words()).isEqualTo("1:100");
        assertThat(scale.across()).isCloseTo(72 / 2.54, Offset.offset(1e-9));
        assertThat(scale.y(0) - scale.y(10)).isCloseTo(720 / 2.54, Offset.offset(1e-9));
        Scale slender = Scale.fitting(new Box(0, 0, 400, 400), 0, 1, 0, 100, 120);
        assertThat(slender.words()).isEqualTo("widths 1:24, heights 1:710");
        assertThat(slender.box(0, 1, 0, 100).right()).isLessThanOrEqualTo(400);
    }

    @Test
    void writesAColumnOnlyAsFarAsThereIsRoom() {
        Sheet sheet = new Sheet(Paper.sizes(UnitSystem.SI).get(0), "t", "d");
        Column column = new Column(sheet, new Box(50, 50, 100, 40));
        column.text("one");
        assertThat(column.full()).isFalse();
        column.text("word ".repeat(200));
        column.sign((on, box) -> on.solid(box), "a sign that has no room");
        column.picture(30, box -> sheet.solid(box));
        assertThat(column.full()).isTrue();
        Drawn drawn = Drawn.of(sheet.finish());
        assertThat(drawn.words())
                .hasSize(4)
                .allSatisfy(words -> assertThat(words.bottom()).isLessThan(90));
        assertThat(drawn.filled("black")).isEmpty();
    }

    @Test
    void writesCoordinatesShort() {
        assertThat(Svg.number(-0.001)).isEqualTo("0");
        assertThat(Svg.number(1200)).isEqualTo("1200");
        assertThat(Svg.number(1.005)).isEqualTo("1");
        assertThat(Svg.number(2.345)).isEqualTo("2.34");
    }

    @Test
    void hasPatternsThatAreAllDifferent() {
        for (int i = 0; i < Hatch.count(); i++) {
            for (int k = 0; k < i; k++) {
                assertThat(Hatch.of(i)).isNotEqualTo(Hatch.of(k));
            }
        }
        assertThat(Paper.sizes(UnitSystem.SI)).extracting(Paper::name).startsWith("A4");
    }
}
