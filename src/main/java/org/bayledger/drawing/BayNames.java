package org.bayledger.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.review.Bay;

/**
 * Writes the names of bays into their frames: across, else upright, else a number whose name stands
 * in a key, else not at all.
 */
final class BayNames {

    private final Sheet sheet;
    private final List<String> key = new ArrayList<>();
    private int unnamed;

    BayNames(Sheet sheet) {
        this.sheet = sheet;
    }

    void write(Bay bay, int number, Box frame, List<String> below) {
        List<Label> full = new ArrayList<>();
        double y = frame.middleY() - below.size() * 4.5;
        full.add(Label.centred(bay.id(), frame.middleX(), y).inBold());
        for (String words : below) {
            y += 9;
            full.add(Label.centred(words, frame.middleX(), y));
        }
        Label plain = Label.centred(bay.id(), frame.middleX(), frame.middleY());
        Label name = plain.inBold();
        Label mark = Label.centred("(" + number + ")", frame.middleX(), frame.middleY()).inBold();
        if (sheet.putIfFree(full, frame)
                || sheet.putIfFree(name, frame)
                || sheet.putIfFree(plain, frame)
                || sheet.putIfFree(name.turned(), frame)
                || sheet.putIfFree(plain.turned(), frame)) {
            return;
        }
        if (sheet.putIfFree(mark, frame) || sheet.putIfFree(mark.turned(), frame)) {
            key.add(Words.together("(" + number + ") " + bay.id()));
        } else {
            unnamed++;
        }
    }

    /** Names of the bays that stand on the drawing by their numbers. */
    List<String> key() {
        return List.copyOf(key);
    }

    /** How many bays are too small for a number. */
    int unnamed() {
        return unnamed;
    }
}
