package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bayledger.check.StrictJson;
import org.junit.jupiter.api.Test;

/** Inputs and results compared by item. */
class ChangesTest {

    @Test
    void nothingChangedWhereOnlySpellingDid() {
        assertThat(inputs("{\"a\":1.50,\"b\":null,\"c\":[1]}", "{\"c\":[1.0],\"a\":1.5}"))
                .isEmpty();
    }

    @Test
    void findsEachChangeUnderItsItem() {
        String base =
                """
                {"name":"x","site":{"exposureCategory":"B"},
                 "glassTypes":[{"id":"G1","panes":[{"nominalThickness":"6 mm"}]}],
                 "sections":[{"id":"V1","secondMomentOfArea":"6.5 in4"}],
                 "bays":[{"id":"N-02","sill":"0 ft"},
                         {"id":"N-03","sill":"14 ft","columns":["5 ft","5 ft"],
                          "lites":[{"column":2,"row":2,"glassType":"G1"}],
                          "mullion":{"section":"V1","supports":["0 ft","13 ft"]},
                          "anchors":[{"id":"L2","role":"DEAD_LOAD"},{"id":"L3","role":"WIND_LOAD"}],
                          "movement":{"drift":{"sideClearance":"0.25 in"}},
                          "stackJoints":[{"elevation":"16 ft"}]}]}""";
        String head =
                """
                {"name":"y","site":{"exposureCategory":"C"},
                 "glassTypes":[{"id":"G1","panes":[{"nominalThickness":"8 mm"}]}],
                 "sections":[{"id":"V1","secondMomentOfArea":"7.5 in4"},{"id":"V2"}],
                 "bays":[{"id":"N-03","sill":"15 ft","columns":["5 ft","5 ft","5 ft"],
                          "lites":[{"column":1,"row":1,"glassType":"G1"},
                                   {"column":2,"row":2,"glassType":"G2"}],
                          "mullion":{"section":"V2","supports":["0 ft","13 ft"]},
                          "horizontal":{"section":"H1"},
                          "anchors":[{"id":"L3","role":"DEAD_LOAD"}],
                          "movement":{"drift":{"sideClearance":"0.5 in"}},
                          "stackJoints":[{"elevation":"17 ft"}]}]}""";
        assertThat(inputs(base, head))
                .containsExactlyInAnyOrder(
                        "document /name: x -> y",
                        "site /site/exposureCategory: B -> C",
                        "glassType/G1 /glassTypes/0/panes/0/nominalThickness: 6 mm -> 8 mm",
                        "section/V1 /sections/0/secondMomentOfArea: 6.5 in4 -> 7.5 in4",
                        "section/V2 /sections/1: null -> {id=V2}",
                        "N-02 /bays/0: {id=N-02, sill=0 ft} -> null",
                        "N-03 /bays/0/sill: 14 ft -> 15 ft",
                        "N-03 /bays/0/columns: [5 ft, 5 ft] -> [5 ft, 5 ft, 5 ft]",
                        "N-03/lite/1-1 /bays/0/lites/0: null -> {column=1, row=1, glassType=G1}",
                        "N-03/lite/2-2 /bays/0/lites/1/glassType: G1 -> G2",
                        "N-03/mullion /bays/0/mullion/section: V1 -> V2",
                        "N-03/horizontal /bays/0/horizontal: null -> {section=H1}",
                        "N-03/anchor/L2 /bays/1/anchors/0: {id=L2, role=DEAD_LOAD} -> null",
                        "N-03/anchor/L3 /bays/0/anchors/0/role: WIND_LOAD -> DEAD_LOAD",
                        "N-03/movement /bays/0/movement/drift/sideClearance: 0.25 in -> 0.5 in",
                        "N-03/stackJoint/1 /bays/0/stackJoints/0/elevation: 16 ft -> 17 ft");
    }

    @Test
    void bringsUpAnotherOrder() {
        assertThat(
                        inputs(
                                "{\"bays\":[{\"id\":\"a\"},{\"id\":\"b\"}]}",
                                "{\"bays\":[{\"id\":\"b\"},{\"id\":\"a\"}]}"))
                .containsExactly("document /bays: [a, b] -> [b, a]");
    }

    @Test
    void findsVerdictsUtilizationsAndNotesThatMoved() {
        String base =
                """
                {"bays":[{"id":"N","items":[
                   {"id":"N/lite/1-1","check":"GLASS","verdict":"SATISFIED","utilization":0.8},
                   {"id":"N/lite/1-1","check":"SETTING_BLOCKS","verdict":"SATISFIED","utilization":null},
                   {"id":"N/mullion/1","check":"FRAMING","verdict":"SATISFIED","utilization":0.9},
                   {"id":"N/mullion/2","check":"FRAMING","verdict":"SATISFIED","utilization":0.9}]}],
                 "notes":[{"mark":"*","items":["N/lite/1-1"],"text":"blocks at eighth points"},
                          {"mark":"1","items":["N/anchor/L2"],"text":"fixed anchor"},
                          {"mark":"2","items":["N/lite/2-2"],"text":"shims"},
                          {"mark":"3","items":["N"],"text":"same"}]}""";
        String head =
                """
                {"bays":[{"id":"N","items":[
                   {"id":"N/lite/1-1","check":"GLASS","verdict":"EXCEEDED","utilization":1.2},
                   {"id":"N/lite/1-1","check":"SETTING_BLOCKS","verdict":"SATISFIED","utilization":null},
                   {"id":"N/mullion/1","check":"FRAMING","verdict":"SATISFIED","utilization":0.90},
                   {"id":"N/mullion/3","check":"FRAMING","verdict":"UNDETERMINED","utilization":null}]}],
                 "notes":[{"mark":"3","items":["N"],"text":"same"},
                          {"mark":"*","items":["N/lite/1-1"],"text":"blocks at tenth points"},
                          {"mark":"2","items":["N/lite/2-2","N/lite/3-3"],"text":"shims"},
                          {"mark":"4","items":["N/anchor/L9"],"text":"slotted anchor"}]}""";
        Comparison.Effect effect = ResultChanges.between(reviewed(base), reviewed(head));
        assertThat(effect.verdicts())
                .extracting(Comparison.VerdictChange::toString)
                .containsExactly(
                        "VerdictChange[item=N/lite/1-1, check=GLASS, from=SATISFIED, to=EXCEEDED,"
                                + " utilizationFrom=0.8, utilizationTo=1.2, utilizationChange=0.4]",
                        "VerdictChange[item=N/mullion/2, check=FRAMING, from=SATISFIED, to=null,"
                                + " utilizationFrom=0.9, utilizationTo=null, utilizationChange=null]",
                        "VerdictChange[item=N/mullion/3, check=FRAMING, from=null,"
                                + " to=UNDETERMINED, utilizationFrom=null, utilizationTo=null, utilizationChange=null]");
        assertThat(texts(effect.notes().added())).containsExactly("slotted anchor");
        assertThat(texts(effect.notes().removed())).containsExactly("fixed anchor");
        assertThat(texts(effect.notes().changed().stream().map(c -> c.to()).toList()))
                .containsExactly("blocks at tenth points", "shims");
    }

    private static List<String> texts(List<Object> notes) {
        return notes.stream().map(note -> Trees.text(note, "text")).toList();
    }

    private static List<String> inputs(String base, String head) {
        return InputChanges.between(tree(base), tree(head)).stream()
                .map(c -> c.item() + " " + c.pointer() + ": " + c.from() + " -> " + c.to())
                .toList();
    }

    private static Map<?, ?> tree(String json) {
        return (Map<?, ?>) java.util.Objects.requireNonNull(StrictJson.read(json.getBytes(UTF_8)));
    }

    private static Reviewed reviewed(String json) {
        List<Reviewed.Bay> bays = new ArrayList<>();
        for (Object bay : Trees.present(Trees.list(tree(json), "bays"))) {
            bays.add(
                    new Reviewed.Bay(
                            Trees.text(bay, "id"),
                            new Content(CanonicalJson.bytes(bay)),
                            ItemVerdict.of(bay)));
        }
        return new Reviewed(tree(json), bays);
    }
}
