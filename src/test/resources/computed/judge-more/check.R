# A second computation of the same figures, to find where the first one is off: stationary point of the restricted likelihood
# by Fisher scoring with analytic derivatives, Kenward-Roger written out for one contrast, degrees of freedom 2 v^2 / (g' I^-1 g).
# Sourced by make-tables.R; nothing that it computes is written out.
design_of <- function(d, drift, covariate) {
  k <- terms_of(d, drift, covariate)
  X <- model.matrix(as.formula(sub("value ~", "~", k$f)), k$d); Z <- model.matrix(~ factor(k$d$install) - 1)
  list(X = X, y = k$d$value, G = list(Z %*% t(Z), diag(nrow(X))), L = as.numeric(colnames(X) == "partB"))
}
at_ <- function(m, s, nu, s0) {
  V <- s[1] * m$G[[1]] + s[2] * m$G[[2]]; Vi <- chol2inv(chol(V)); C <- solve(t(m$X) %*% Vi %*% m$X); P <- Vi - Vi %*% m$X %*% C %*% t(m$X) %*% Vi
  Py <- P %*% m$y; PG <- lapply(m$G, function(G) P %*% G)
  info <- matrix(0, 2, 2); for (i in 1:2) for (j in 1:2) info[i, j] <- .5 * sum(PG[[i]] * t(PG[[j]]))
  score <- sapply(1:2, function(i) -.5 * sum(diag(PG[[i]])) + .5 * sum(Py * (m$G[[i]] %*% Py)) + (if (nu[i] > 0) -nu[i] / (2 * s[i]) + nu[i] * s0[i]^2 / (2 * s[i]^2) else 0))
  prior <- ifelse(nu > 0, nu / (2 * s^2), 0); value <- -2 * sum(log(diag(chol(Vi)))) + as.numeric(determinant(t(m$X) %*% Vi %*% m$X)$modulus) + sum(m$y * Py) +
    sum(ifelse(nu > 0, nu * (log(s) + s0^2 / s), 0))
  list(Vi = Vi, C = C, info = info, score = score, prior = prior, value = value)
}
scoring <- function(m, nu, s0, start) {
  s <- start
  for (i in 1:500) {
    a <- at_(m, s, nu, s0); J <- a$info + diag(a$prior); free <- s > 0 | a$score > 0; step <- c(0, 0)
    step[free] <- solve(J[free, free, drop = FALSE], a$score[free])
    for (half in 1:60) {
      to <- pmax(s + step, 0); if (to[2] <= 0) to[2] <- s[2] / 10; if (nu[1] > 0 && to[1] <= 0) to[1] <- s[1] / 10
      b <- at_(m, to, nu, s0); if (b$value <= a$value + 1e-12 * abs(a$value)) break; step <- step / 2
    }
    done <- max(abs(to - s) / (s + 1e-300 + (s == 0))) < 1e-13; s <- to; if (done) break
  }
  s
}
check_fit <- function(d, drift, covariate = NULL, nu = c(0, 0), s0 = c(0, 0)) {
  m <- design_of(d, drift, covariate); m$y <- m$y - mean(m$y)
  w <- sum(residuals(lm(value ~ factor(install), d))^2) / max(1, nrow(d) - length(unique(d$install))); w <- if (w > 0) w else var(d$value)
  tries <- lapply(c(.01, .3, 1, 5, 50), function(r) { s <- scoring(m, nu, s0, c(r * w, w)); list(s = s, value = at_(m, s, nu, s0)$value) })
  s <- tries[[which.min(sapply(tries, `[[`, "value"))]]$s
  a <- at_(m, s, nu, s0); Vi <- a$Vi; C <- a$C; X <- m$X; L <- m$L
  b <- C %*% t(X) %*% Vi %*% m$y; v <- sum(L * (C %*% L)); w <- Vi %*% X %*% C %*% L; g <- sapply(m$G, function(G) sum(w * (G %*% w)))
  W <- solve(a$info + diag(a$prior)); df <- 2 * v^2 / sum(g * (W %*% g)); se <- sqrt(v)
  if (all(nu == 0)) {                                             # Kenward-Roger: V is linear in the two variances, so no second derivatives
    PP <- lapply(m$G, function(G) -t(X) %*% Vi %*% G %*% Vi %*% X); add <- 0 * C
    for (i in 1:2) for (j in 1:2) add <- add + W[i, j] * (t(X) %*% Vi %*% m$G[[i]] %*% Vi %*% m$G[[j]] %*% Vi %*% X - PP[[i]] %*% C %*% PP[[j]])
    se <- sqrt(sum(L * ((C + 2 * C %*% add %*% C) %*% L)))
  }
  est <- sum(L * b)
  list(estimate = est, standardError = se, degreesOfFreedom = df, pValue = 2 * pt(-abs(est / se), df), s = s)
}
