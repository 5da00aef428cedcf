# Nested tables (pulls in installs in sessions), their REML variances by lme4, and Satterthwaite's degrees of freedom of each variance
# from the expected information 1/2 tr(P V_j P V_k), with dense matrices. Run: Rscript make.R   (R 4.2.2, lme4 1.1.31)
suppressMessages(library(lme4))
tight <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-12, maxfun = 1e6),
                     check.conv.singular = "ignore", check.conv.grad = "ignore", check.conv.hess = "ignore")

# Newton steps on the dense restricted likelihood, from lme4's answer; a variance at 0 stays there
dense <- function(values, Vs, theta) {
  y <- values - values[1]
  one <- matrix(1, length(y), 1); free <- theta > 0
  for (step in 0:60) {
    V <- Reduce(`+`, Map(`*`, theta, Vs)); A <- solve(V); c <- sum(A)
    P <- A - (A %*% one) %*% (t(one) %*% A) / c
    I <- sapply(Vs, function(a) sapply(Vs, function(b) 0.5 * sum((P %*% a) * t(P %*% b))))
    score <- sapply(Vs, function(a) -0.5 * (sum(P * t(a)) - drop(t(y) %*% P %*% a %*% P %*% y)))
    if (step == 60) break
    move <- rep(0, length(theta)); move[free] <- solve(I[free, free, drop = FALSE], score[free])
    if (all(abs(move) <= 1e-15 * max(theta))) break
    scale <- 1; while (any(theta + scale * move < 0)) scale <- scale / 2
    theta <- theta + scale * move
  }
  crit <- determinant(V)$modulus + log(c) + drop(t(y) %*% P %*% y) + (length(y) - 1) * log(2 * pi)
  mean <- values[1] + sum(A %*% y) / c
  list(theta = theta, df = 2 * theta^2 / diag(solve(I)), se = sqrt(diag(solve(I))), score = score, crit = c(crit), mean = mean,
       seMean = sqrt(1 / c))
}

indicator <- function(f) { Z <- model.matrix(~ 0 + factor(f)); Z %*% t(Z) }

out <- NULL
study <- function(name, d, terms) {
  form <- list(full = value ~ 1 + (1 | session) + (1 | install), one = value ~ 1 + (1 | install), days = value ~ 1 + (1 | session))[[terms]]
  fit <- lmer(form, d, REML = TRUE, control = tight)
  vc <- as.data.frame(VarCorr(fit)); get <- function(g) { v <- vc$vcov[vc$grp == g]; if (length(v)) v else NA }
  start <- c(get("Residual"), get("install"), get("session")); here <- !is.na(start)
  start[here & start < 1e-9 * max(start, na.rm = TRUE)] <- 0
  Vs <- list(diag(nrow(d)), indicator(d$install), if (length(unique(d$session)) > 1) indicator(d$session) else diag(nrow(d)))[here]
  r <- dense(d$value, Vs, start[here])
  cat(name, r$crit - REMLcrit(fit), max(abs(r$score[r$theta > 0])), r$score[r$theta == 0], "\n")
  stopifnot(abs(r$crit - REMLcrit(fit)) < 1e-5, all(r$score[r$theta == 0] <= 0))
  full <- function(x) { f <- rep(NA, 3); f[here] <- x; f }
  d$value <- format(d$value, digits = 17, trim = TRUE)
  write.csv(d[, c("session", "install", "pull", "value")], paste0(name, ".csv"), row.names = FALSE, quote = FALSE)
  out <<- rbind(out, data.frame(name, t(full(r$theta)), t(full(r$se)), t(full(r$df)), r$crit, r$mean, r$seMean))
}

table <- function(seed, installs, pulls, sd, level = 190) {
  set.seed(seed); rows <- NULL
  for (s in seq_along(installs)) {
    day <- rnorm(1, 0, sd[3])
    for (i in seq_len(installs[s])) {
      refit <- rnorm(1, 0, sd[2]); n <- if (length(pulls) == 1) pulls else sample(pulls, 1)
      for (k in seq_len(n)) rows <- rbind(rows, data.frame(session = paste0("S", s), install = paste0("S", s, ".", i), pull = k,
        value = round(level + day + refit + rnorm(1, 0, sd[1]), 2)))
    }
  }
  rows
}

study("balanced-6x3x4", table(11, rep(3, 6), 4, c(0.9, 1.4, 1.6)), "full")
study("unbalanced", table(12, c(2, 4, 1, 3, 5, 2, 1), 2:6, c(1.1, 1.3, 1.8)), "full")
study("refit-at-zero", table(23, c(3, 2, 3, 4), 2:5, c(1.5, 0.05, 1.2)), "full")
study("day-at-zero", table(5, c(3, 2, 4, 3, 2), 2:5, c(1.0, 1.6, 0.05)), "full")
study("both-at-zero", table(41, c(2, 3, 2), 3:5, c(2, 0.01, 0.01)), "full")
study("small-pull-scatter", table(17, c(3, 3, 2, 4), 2:4, c(0.03, 2.2, 3.1)), "full")
study("large-level", table(19, c(3, 3, 2, 4), 2:4, c(0.9, 1.2, 2.1), 141000), "full")
study("one-session", table(13, 6, 2:5, c(0.9, 1.2, 0)), "one")
study("one-install-a-session", table(14, rep(1, 9), 2:5, c(0.9, 1.2, 0.8)), "one")
study("one-pull-an-install", table(15, c(2, 3, 4, 2, 3), 1, c(0.9, 1.2, 1.8)), "days")
names(out) <- c("name", "pull", "refit", "day", "pullSe", "refitSe", "daySe", "pullDf", "refitDf", "dayDf", "criterion", "mean", "meanSe")
for (i in 2:13) out[[i]] <- ifelse(is.na(out[[i]]), "", format(out[[i]], digits = 15, trim = TRUE, scientific = FALSE))
write.csv(out, "figures.csv", row.names = FALSE, quote = FALSE)
