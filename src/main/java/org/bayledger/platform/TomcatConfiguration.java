package org.bayledger.platform;

import org.apache.catalina.core.StandardHost;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the servlet container answers by itself. */
@Configuration(proxyBeanMethods = false)
class TomcatConfiguration {

    @Bean
    WebServerFactoryCustomizer<TomcatServletWebServerFactory> problems() {
        return factory -> {
            factory.addEngineValves(new RequestValve());
            factory.addContextCustomizers(
                    context -> {
                        if (context.getParent() instanceof StandardHost host) {
                            host.setErrorReportValveClass(ProblemReportValve.class.getName());
                        }
                    });
        };
    }
}
