package org.bayledger.anchorage;

import java.util.ArrayList;
import java.util.List;
import org.bayledger.check.Verdict;
import org.bayledger.quantity.Dimension;
import org.bayledger.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** How each piece is held: exactly one dead-load anchor is right. */
final class PieceHolding {

    private PieceHolding() {}

    static List<PieceResult> of(List<Piece> pieces, Movement movement) {
        List<PieceResult> results = new ArrayList<>();
        for (Piece piece : pieces) {
            List<Anchor> fixed = piece.fixed();
            Verdict verdict =
                    switch (fixed.size()) {
                        case 0 ->
                                piece.anchors().isEmpty() && piece.isOpenEnded()
                                        ? Verdict.UNDETERMINED
                                        : Verdict.EXCEEDED;
                        case 1 -> Verdict.SATISFIED;
                        default -> Verdict.UNDETERMINED;
                    };
            List<LockedInResult> lockedIn = LockedIn.of(piece, movement);
            results.add(
                    new PieceResult(
                            distance(piece.bottom()),
                            distance(piece.top()),
                            fixed.stream().map(Anchor::id).toList(),
                            piece.anchors().stream()
                                    .filter(anchor -> !anchor.isFixed())
                                    .map(Anchor::id)
                                    .toList(),
                            greatest(lockedIn),
                            lockedIn,
                            verdict));
        }
        return results;
    }

    private static @Nullable Quantity greatest(List<LockedInResult> lockedIn) {
        Quantity greatest = null;
        for (LockedInResult pair : lockedIn) {
            if (greatest == null || pair.thermal().si() > greatest.si()) {
                greatest = pair.thermal();
            }
        }
        return greatest;
    }

    private static @Nullable Quantity distance(@Nullable Double metres) {
        return metres == null ? null : Quantity.of(Dimension.DISTANCE, metres);
    }
}
