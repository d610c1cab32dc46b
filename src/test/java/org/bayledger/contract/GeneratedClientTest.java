package org.bayledger.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import org.bayledger.client.ApiClient;
import org.bayledger.client.ApiException;
import org.bayledger.client.ApiResponse;
import org.bayledger.client.ChecksApi;
import org.bayledger.client.LedgerApi;
import org.bayledger.client.model.Axis;
import org.bayledger.client.model.ComparisonInputChange;
import org.bayledger.client.model.FramingRequest;
import org.bayledger.client.model.FramingResult;
import org.bayledger.client.model.Load;
import org.bayledger.client.model.ProjectRequest;
import org.bayledger.client.model.ProjectView;
import org.bayledger.client.model.Quantity;
import org.bayledger.client.model.QuantityInput;
import org.bayledger.client.model.ReviewDocument;
import org.bayledger.client.model.RevisionRequest;
import org.bayledger.client.model.RevisionSummary;
import org.bayledger.client.model.Section;
import org.bayledger.client.model.Verification;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A client that a caller would generate from the contract talks to the service. */
@RunningService
class GeneratedClientTest {

    @LocalServerPort private int port;

    private final ApiClient client = new ApiClient();

    @BeforeEach
    void pointAtTheService() {
        client.updateBaseUri("http://127.0.0.1:" + port);
    }

    @Test
    void checksAMember() throws ApiException {
        FramingResult result =
                new ChecksApi(client).checkFraming(member("13 ft"), "US", "GOVERNING");
        assertThat(result.getVerdict()).isNotBlank();
        assertThat(result.getMaxDeflection().getUnit()).isEqualTo("in");
        double expected = deflectionOfTheMember();
        assertThat(result.getMaxDeflection().getValue())
                .isBetween(expected * 0.9999, expected * 1.0001);
        assertThat(result.getReactions()).hasSize(2);
    }

    /** Simple span under uniform load: 5 w L4 / (384 E I), 35 psf x 5 ft on 13 ft, in inches. */
    static double deflectionOfTheMember() {
        return 5 * (35 * 5 / 12.0) * Math.pow(156, 4) / (384 * 10_100_000.0 * 6.5);
    }

    @Test
    void playsTheDemo() throws Exception {
        LedgerApi ledger = new LedgerApi(client);
        ProjectView created = ledger.createProject(new ProjectRequest().name("By a client"));
        String id = created.getProjectId();
        assertThat(ledger.readProject(id).getName()).isEqualTo("By a client");
        RevisionRequest issue = issue(1, "Issued for review");
        RevisionRequest fix = issue(2, "Corner mullions of level 7 strengthened");
        ApiResponse<RevisionSummary> first =
                ledger.recordRevisionWithHttpInfo(id, issue, null, "*", null);
        assertThat(first.getData().getVerdict()).isEqualTo("EXCEEDED");
        String head = first.getHeaders().get("etag").get(0);
        RevisionSummary second = ledger.recordRevision(id, fix, head, null, null);
        assertThat(second.getVerdict()).isEqualTo("SATISFIED");
        assertThat(second.getPreviousHash()).isEqualTo(first.getData().getHash());
        assertThatThrownBy(() -> ledger.recordRevision(id, fix, head, null, null))
                .isInstanceOfSatisfying(
                        ApiException.class,
                        refused -> assertThat(refused.getCode()).isEqualTo(412));
        // what tells the two documents apart and nothing else: the client lost none of them
        assertThat(ledger.compareRevisions(id, 1, 2, null).getInputs())
                .extracting(ComparisonInputChange::getPointer)
                .containsExactly("/bays/2/retention", "/bays/3/mullion/section");
        Verification verification = ledger.verifyProject(id, null, null);
        assertThat(verification.getIntact()).isTrue();
        assertThat(verification.getSize()).isEqualTo(2);
    }

    private static RevisionRequest issue(int number, String reason) throws IOException {
        Path file = Path.of("demo-seed", "quillmoor-library-" + number + ".json");
        return new RevisionRequest()
                .author("project engineer")
                .reason(reason)
                .document(
                        ApiClient.createDefaultObjectMapper()
                                .readValue(file.toFile(), ReviewDocument.class));
    }

    @Test
    void hearsWhatIsWrong() {
        assertThatThrownBy(() -> new ChecksApi(client).checkFraming(member("13 mph"), null, null))
                .isInstanceOfSatisfying(
                        ApiException.class,
                        refused -> {
                            assertThat(refused.getCode()).isEqualTo(400);
                            assertThat(refused.getResponseBody())
                                    .contains("\"pointer\":\"/length\"");
                        });
    }

    private static FramingRequest member(String length) {
        return new FramingRequest()
                .axis(Axis.WIND)
                .length(text(length))
                .addSupportsItem(text("0 ft"))
                .addSupportsItem(new QuantityInput(new Quantity().value(13.0).unit("ft")))
                .tributaryWidth(text("5 ft"))
                .section(
                        new Section()
                                .secondMomentOfArea(text("6.5 in4"))
                                .elasticModulus(text("10100 ksi")))
                .load(new Load().positive(text("30 psf")).negative(text("-35 psf")));
    }

    private static QuantityInput text(String quantity) {
        return new QuantityInput(quantity);
    }
}
