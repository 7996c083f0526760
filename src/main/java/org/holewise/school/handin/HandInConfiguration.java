package org.holewise.school.handin;

import org.springframework.context.annotation.Configuration;
import org.springframework.scheduling.annotation.EnableScheduling;

/** Lets the marking queue look at its jobs again and again. */
@Configuration(proxyBeanMethods = false)
@EnableScheduling
class HandInConfiguration {}
