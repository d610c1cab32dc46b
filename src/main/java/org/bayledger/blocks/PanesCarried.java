package org.bayledger.blocks;

/** Which panes of an insulating unit a setting block is under. */
public enum PanesCarried {
    /** All of them: the block reaches across the full width of the edge. */
    ALL_PANES("all panes"),
    /** The outermost pane alone. */
    OUTDOOR_PANE("the outdoor pane alone"),
    /** The innermost pane alone. */
    INDOOR_PANE("the indoor pane alone"),
    /** None: the block is under the spacer between the panes. */
    SPACER_ONLY("the spacer between the panes alone");

    private final String words;

    PanesCarried(String words) {
        this.words = words;
    }

    /** What is carried, as a sentence names it. */
    String words() {
        return words;
    }
}
