package org.bayledger.platform;

import org.bayledger.check.AnswerModule;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.converter.HttpMessageConverters;
import org.springframework.util.unit.DataSize;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/** How bodies are read and answers written. */
@Configuration(proxyBeanMethods = false)
class WebConfiguration implements WebMvcConfigurer {

    private final DataSize maxBody;
    private final Workload workload;
    private final OperationMetrics metrics;
    private final ObjectProvider<RequestMappingHandlerMapping> mapping;
    private final JsonMapper json;

    WebConfiguration(
            @Value("${bayledger.limits.body:10MB}") DataSize maxBody,
            Workload workload,
            OperationMetrics metrics,
            @Qualifier("requestMappingHandlerMapping")
                    ObjectProvider<RequestMappingHandlerMapping> mapping,
            JsonMapper json) {
        this.maxBody = maxBody;
        this.workload = workload;
        this.metrics = metrics;
        // asked for when a request comes: it is itself made with this configuration
        this.mapping = mapping;
        this.json = json;
    }

    @Override
    public void configureMessageConverters(HttpMessageConverters.ServerBuilder builder) {
        builder.addCustomConverter(new RequestReader(Math.toIntExact(maxBody.toBytes()), workload))
                .addCustomConverter(new AnswerWriter(json));
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(metrics);
        registry.addInterceptor(new QueryGuard(mapping));
        registry.addInterceptor(workload);
    }

    @Bean
    static JsonMapperBuilderCustomizer answers() {
        return builder ->
                builder.addModule(new AnswerModule())
                        .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                        .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN);
    }
}
