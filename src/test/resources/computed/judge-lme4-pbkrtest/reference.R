# R 4.2.2, lme4 1.1.31, lmerTest 3.1.3, pbkrtest 0.5.2. The model of the judge with dense matrices, apart from the program.
# y = X b + Z r + e.
# own_ref:    own-data mode, lme4 REML (refit variance >= 0) with Kenward-Roger from pbkrtest.
# record_ref: rig-record mode, dense matrices, REML with scaled-inverse-chi-square terms, expected-information Satterthwaite.
suppressMessages({library(jsonlite); library(lme4); library(lmerTest); library(pbkrtest)})
record_ref <- function(d, drift="none", covariate=NULL, sr0, nur, sp0=NA, nup=0, alpha=.05, margin=NA) {
  d$install <- factor(d$install)
  X <- cbind(1, as.numeric(d$part == "B"))
  sess <- if (!is.null(d$session)) factor(d$session) else factor(rep(1, nrow(d)))
  if (nlevels(sess) > 1) X <- cbind(model.matrix(~ sess - 1), as.numeric(d$part == "B"))
  k <- if (nlevels(sess) > 1) nlevels(sess) + 1 else 2
  if (drift != "none") { t <- d$minutes - ave(d$minutes, sess); X <- cbind(X, t); if (drift == "quadratic") X <- cbind(X, t^2 - mean(t^2)) }
  for (cv in covariate) X <- cbind(X, d[[cv]] - mean(d[[cv]]))
  Z <- model.matrix(~ install - 1, d); y <- d$value; n <- length(y)
  ZZ <- Z %*% t(Z); I <- diag(n)
  crit <- function(sr, sp) {
    V <- sr * ZZ + sp * I; ch <- tryCatch(chol(V), error = function(e) NULL); if (is.null(ch)) return(1e10)
    Vi <- chol2inv(ch); XtVi <- t(X) %*% Vi; A <- XtVi %*% X; b <- solve(A, XtVi %*% y); r <- y - X %*% b
    2 * sum(log(diag(ch))) + as.numeric(determinant(A)$modulus) + sum(r * (Vi %*% r)) +
      (if (nur > 0) nur * (log(sr) + sr0^2 / sr) else 0) + (if (nup > 0) nup * (log(sp) + sp0^2 / sp) else 0)
  }
  s0 <- var(residuals(lm(y ~ X - 1 + 0)))
  best <- NULL
  for (st in list(c(0, 0), c(-1, 1), c(1, -1), c(2, -1), c(-2, 0))) {
    f <- function(p) crit(exp(p[1]) * s0, exp(p[2]) * s0)
    o <- optim(st, f, method = "Nelder-Mead", control = list(reltol = 1e-15, maxit = 20000))
    o <- optim(o$par, f, method = "BFGS", control = list(reltol = 1e-16, maxit = 2000))
    if (is.null(best) || o$value < best$value) best <- c(o, list(f = f))
  }
  p <- best$par
  sr <- exp(p[1]) * s0; sp <- exp(p[2]) * s0
  V <- sr * ZZ + sp * I; Vi <- solve(V); C <- solve(t(X) %*% Vi %*% X); b <- C %*% t(X) %*% Vi %*% y
  P <- Vi - Vi %*% X %*% C %*% t(X) %*% Vi; G <- list(ZZ, I); info <- matrix(0, 2, 2)
  for (i in 1:2) for (j in 1:2) info[i, j] <- .5 * sum((P %*% G[[i]]) * t(P %*% G[[j]]))
  info[1, 1] <- info[1, 1] + if (nur > 0) nur / (2 * sr^2) else 0
  info[2, 2] <- info[2, 2] + if (nup > 0) nup / (2 * sp^2) else 0
  cc <- rep(0, ncol(X)); cc[k] <- 1; v <- sum(cc * (C %*% cc)); w <- Vi %*% X %*% C %*% cc
  g <- sapply(G, function(Gi) sum(w * (Gi %*% w))); df <- 2 * v^2 / sum(g * solve(info, g))
  est <- sum(cc * b); se <- sqrt(v); q <- qt(1 - alpha / 2, df)
  list(estimate = est, standardError = se, degreesOfFreedom = df, t = est / se, pValue = 2 * pt(-abs(est / se), df),
       low = est - q * se, high = est + q * se, pullScatter = sqrt(sp), refitVariance = sr, criterion = best$value,
       equivalenceP = if (!is.na(margin)) max(pt(-(est + margin) / se, df), pt((est - margin) / se, df)) else NA)
}

terms_of <- function(d, drift, covariate) {
  sess <- if (!is.null(d$session)) factor(d$session) else factor(rep(1, nrow(d)))
  d$install <- factor(d$install); d$partB <- as.numeric(d$part == "B")
  d$t1 <- if (!is.null(d$minutes)) d$minutes - ave(d$minutes, sess) else 0; d$t2 <- d$t1^2
  d$sess <- sess
  f <- c(if (nlevels(sess) > 1) "sess", "partB", if (drift != "none") "t1", if (drift == "quadratic") "t2", covariate)
  list(d = d, f = paste("value ~", paste(f, collapse = " + ")))
}
own_ref <- function(d, drift = "none", covariate = NULL, alpha = .05, margin = NA) {
  k <- terms_of(d, drift, covariate)
  m <- suppressMessages(suppressWarnings(lmer(as.formula(paste(k$f, "+ (1 | install)")), k$d, REML = TRUE,
         control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhobeg = 2e-3, rhoend = 1e-12, maxfun = 1e5)))))
  b <- fixef(m); L <- as.numeric(names(b) == "partB"); est <- sum(L * b)
  va <- vcovAdj(m); se <- sqrt(sum(L * (va %*% L))); df <- Lb_ddf(L, vcov(m), va); q <- qt(1 - alpha / 2, df)
  vc <- as.data.frame(VarCorr(m))
  list(estimate = est, standardError = se, degreesOfFreedom = df, t = est / se, pValue = 2 * pt(-abs(est / se), df), low = est - q * se, high = est + q * se,
       pullScatter = sigma(m), refitVariance = vc$vcov[1], unadjustedStandardError = sqrt(vcov(m)[L == 1, L == 1]),
       equivalenceP = if (!is.na(margin)) max(pt(-(est + margin) / se, df), pt((est - margin) / se, df)) else NA)
}
means_ref <- function(d, drift = "none") {
  k <- terms_of(d, drift, NULL); a <- aggregate(cbind(value, t1, t2) ~ install + partB + sess, k$d, mean)
  m <- lm(as.formula(k$f), a); s <- summary(m)$coefficients; if (df.residual(m) < 1) return(NULL)
  list(estimate = s["partB", 1], standardError = s["partB", 2], degreesOfFreedom = df.residual(m), pValue = s["partB", 4])
}
# Tipping scatter: refit scatter known (s_r fixed), s_p by REML given it, df from the information of s_p alone; the s_r at which the nearer end of the interval is 0.
known_ref <- function(d, sr, drift = "none", alpha = .05) {
  k <- terms_of(d, drift, NULL); X <- model.matrix(as.formula(sub("value ~", "~", k$f)), k$d); Z <- model.matrix(~ factor(k$d$install) - 1); y <- k$d$value - mean(k$d$value)
  n <- length(y); ZZ <- Z %*% t(Z); I <- diag(n); L <- as.numeric(colnames(X) == "partB")
  f <- function(lp) { V <- sr^2 * ZZ + exp(lp) * I; ch <- chol(V); Vi <- chol2inv(ch); A <- t(X) %*% Vi %*% X; b <- solve(A, t(X) %*% Vi %*% y); r <- y - X %*% b
    2 * sum(log(diag(ch))) + as.numeric(determinant(A)$modulus) + sum(r * (Vi %*% r)) }
  s0 <- log(var(residuals(lm(y ~ factor(k$d$install))))); o <- optimize(f, c(s0 - 8, s0 + 4), tol = 1e-12); sp <- exp(o$minimum)
  V <- sr^2 * ZZ + sp * I; Vi <- solve(V); C <- solve(t(X) %*% Vi %*% X); b <- C %*% t(X) %*% Vi %*% y
  P <- Vi - Vi %*% X %*% C %*% t(X) %*% Vi; info <- .5 * sum(P * t(P)); v <- sum(L * (C %*% L)); w <- Vi %*% X %*% C %*% L; g <- sum(w^2)
  df <- 2 * v^2 / (g^2 / info); list(estimate = sum(L * b), se = sqrt(v), df = df, margin = abs(sum(L * b)) - qt(1 - alpha / 2, df) * sqrt(v))
}
tipping_ref <- function(d, drift = "none") {
  lo <- 1e-6; if (known_ref(d, lo, drift)$margin <= 0) return(NULL)
  hi <- sd(d$value); while (known_ref(d, hi, drift)$margin > 0) hi <- 2 * hi
  uniroot(function(s) known_ref(d, s, drift)$margin, c(lo, hi), tol = 1e-9)$root
}
# All orders with the same number of A and B installs (one session): share with |difference of install means| at least the observed.
randomisation_ref <- function(d) {
  if (!is.null(d$session) && length(unique(d$session)) > 1) return(NULL)
  a <- aggregate(value ~ install + part, d, mean); m <- a$value; nb <- sum(a$part == "B"); obs <- abs(mean(m[a$part == "B"]) - mean(m[a$part == "A"]))
  s <- combn(length(m), nb, function(i) abs(mean(m[i]) - mean(m[-i]))); mean(s >= obs - 1e-9)
}
# The data against the record: mean square of the install-means regression over what the record predicts.
recordf_ref <- function(d, s0, nu, drift = "none") {
  k <- terms_of(d, drift, NULL); a <- aggregate(cbind(value, t1, t2) ~ install + partB + sess, k$d, mean); m <- lm(as.formula(k$f), a); if (df.residual(m) < 1) return(NULL)
  ni <- table(d$install); nh <- 1 / mean(1 / ni); w <- lm(value ~ factor(install), d); sp2 <- summary(w)$sigma^2; nw <- df.residual(w)
  pred <- s0^2 + sp2 / nh; df2 <- pred^2 / (s0^4 / nu + (sp2 / nh)^2 / nw); F <- sum(residuals(m)^2) / df.residual(m) / pred
  list(F = F, df1 = df.residual(m), df2 = df2, pValue = pf(F, df.residual(m), df2, lower.tail = FALSE))
}
return_ref <- function(d) { if (!is.null(d$session) && length(unique(d$session)) > 1) return(NULL)  # last A - first A, raw difference of install means, interval from pull scatter pooled within installs
  a <- unique(d$install[d$part == "A"]); if (length(a) < 2) return(NULL); x <- d$value[d$install == a[1]]; y <- d$value[d$install == a[length(a)]]
  w <- lm(value ~ factor(install), d); s <- summary(w)$sigma; q <- qt(.975, df.residual(w)); e <- mean(y) - mean(x); h <- q * s * sqrt(1 / length(x) + 1 / length(y))
  list(difference = e, low = e - h, high = e + h)
}
