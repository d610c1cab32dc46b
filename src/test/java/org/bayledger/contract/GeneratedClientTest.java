package org.bayledger.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.bayledger.client.ApiClient;
import org.bayledger.client.ApiException;
import org.bayledger.client.ChecksApi;
import org.bayledger.client.LedgerApi;
import org.bayledger.client.model.Axis;
import org.bayledger.client.model.FramingRequest;
import org.bayledger.client.model.FramingResult;
import org.bayledger.client.model.Load;
import org.bayledger.client.model.ProjectRequest;
import org.bayledger.client.model.ProjectView;
import org.bayledger.client.model.Quantity;
import org.bayledger.client.model.QuantityInput;
import org.bayledger.client.model.Section;
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
        // simple span under uniform load: 5 w L4 / (384 E I), 35 psf x 5 ft on 13 ft
        double expected = 5 * (35 * 5 / 12.0) * Math.pow(156, 4) / (384 * 10_100_000.0 * 6.5);
        assertThat(result.getMaxDeflection().getValue())
                .isBetween(expected * 0.9999, expected * 1.0001);
        assertThat(result.getReactions()).hasSize(2);
    }

    @Test
    void createsAndReadsAProject() throws ApiException {
        LedgerApi ledger = new LedgerApi(client);
        ProjectView created = ledger.createProject(new ProjectRequest().name("By a client"));
        assertThat(ledger.readProject(created.getProjectId()).getName()).isEqualTo("By a client");
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
