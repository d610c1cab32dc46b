package org.bayledger.ledger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The stored formats, pinned: a change here would make recorded revisions unverifiable. */
class ManifestTest {

    private static final Project PROJECT =
            new Project(
                    "local",
                    UUID.fromString("0b8f6a52-4a0e-4a57-9b39-0d2a5f0f7c11"),
                    "Civic library",
                    Instant.parse("2026-03-05T14:07:31.25Z"),
                    "local");

    @Test
    void theGenesisHashIsOverEverythingStoredOfTheProject() {
        String canonical =
                "{\"createdAt\":\"2026-03-05T14:07:31.250000Z\",\"createdBy\":\"local\","
                        + "\"name\":\"Civic library\",\"organisation\":\"local\","
                        + "\"projectId\":\"0b8f6a52-4a0e-4a57-9b39-0d2a5f0f7c11\","
                        + "\"version\":\"bayledger-project-1\"}";
        assertThat(PROJECT.genesisHash())
                .isEqualTo(Sha256.hex(canonical.getBytes(UTF_8)))
                .isEqualTo("fde51bfca5350c784a384786fa335fed5204feca39922961cdd306f5e898dad4");
    }

    @Test
    void theRevisionHashIsOverItsCanonicalManifest() {
        Manifest manifest =
                new Manifest(
                        "bayledger-revision-1",
                        PROJECT.organisation(),
                        PROJECT.id().toString(),
                        1,
                        PROJECT.genesisHash(),
                        "A. Reviewer",
                        "local",
                        "für die Prüfung",
                        "0.1.0",
                        "2026-03-05T15:00:00.000000Z",
                        "a".repeat(64),
                        "b".repeat(64),
                        List.of(new Manifest.Bay("N-03", "c".repeat(64), "d".repeat(64))));
        String canonical =
                "{\"author\":\"A. Reviewer\",\"bays\":[{\"id\":\"N-03\",\"input\":\""
                        + "c".repeat(64)
                        + "\",\"result\":\""
                        + "d".repeat(64)
                        + "\"}],\"documentShell\":\""
                        + "a".repeat(64)
                        + "\",\"engineVersion\":\"0.1.0\",\"number\":1,\"organisation\":\"local\","
                        + "\"previousHash\":\""
                        + PROJECT.genesisHash()
                        + "\",\"projectId\":\"0b8f6a52-4a0e-4a57-9b39-0d2a5f0f7c11\","
                        + "\"reason\":\"für die Prüfung\","
                        + "\"recordedAt\":\"2026-03-05T15:00:00.000000Z\",\"recordedBy\":\"local\","
                        + "\"resultShell\":\""
                        + "b".repeat(64)
                        + "\",\"version\":\"bayledger-revision-1\"}";
        assertThat(new String(manifest.canonical(), UTF_8)).isEqualTo(canonical);
        assertThat(manifest.hash())
                .isEqualTo(Sha256.hex(canonical.getBytes(UTF_8)))
                .isEqualTo("22e8333b4d65c6e713429b2148f17a1bc37dd9b55c6549c139c7ebbbbebd8236");
    }

    @Test
    void sha256IsTheStandards() {
        // FIPS 180-4, example "abc" (from memory)
        assertThat(Sha256.hex("abc".getBytes(UTF_8)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void anInstantIsCutToWhatTheDatabaseKeepsBeforeItIsHashed() {
        Instant nanos = Instant.parse("2026-03-05T15:00:00.123456789Z");
        Instant now = Instants.now(Clock.fixed(nanos, ZoneOffset.UTC));
        assertThat(now).isEqualTo(Instant.parse("2026-03-05T15:00:00.123456Z"));
        assertThat(Instants.text(now)).isEqualTo("2026-03-05T15:00:00.123456Z");
    }
}
