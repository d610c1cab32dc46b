package org.bayledger.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.bayledger.check.FaultsException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.web.ErrorResponseException;

class PreconditionTest {

    private static final Head HEAD = new Head(3, "ab12", Instant.EPOCH);

    @ParameterizedTest
    @ValueSource(strings = {"\"ab12\"", " \"ab12\" ", "\"x\", \"ab12\"", "W/\"x\" ,\"ab12\""})
    void holdsWhereATagIsTheHeads(String ifMatch) {
        assertThatCode(() -> Precondition.of(ifMatch, null).require(HEAD))
                .doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"ab1\"", "W/\"ab12\"", "\"\""})
    void failsWhereNoTagIsTheHeads(String ifMatch) {
        assertThatThrownBy(() -> Precondition.of(ifMatch, null).require(HEAD))
                .isInstanceOfSatisfying(
                        ErrorResponseException.class,
                        problem -> assertThat(problem.getStatusCode().value()).isEqualTo(412));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "*", "ab12", "\"ab12", "\"ab12\",", "\"a\" \"b\"", "w/\"a\"", ",\"a\""})
    void refusesWhatIsNoEntityTag(String ifMatch) {
        assertThatThrownBy(() -> Precondition.of(ifMatch, null))
                .isInstanceOf(FaultsException.class);
    }

    @Test
    void theFirstOneIsOnlyTheFirst() {
        Precondition first = Precondition.of(null, "*");
        assertThatCode(() -> first.require(new Head(0, "ab12", null))).doesNotThrowAnyException();
        assertThatThrownBy(() -> first.require(HEAD)).isInstanceOf(ErrorResponseException.class);
        assertThatThrownBy(() -> Precondition.of("\"ab12\"", "*"))
                .isInstanceOf(FaultsException.class);
    }
}
