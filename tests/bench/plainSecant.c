/* The same plain secant in C, for the figure beside it. Reads points "area_mm2 wall_mm ambient_C morgan current_A" and prints nanoseconds a solve. */
#include <math.h>
#include <stdio.h>
#include <time.h>

#define MOST 20000
static const double pi = 3.14159265358979323846;

static double flow(double Ts, double Ta, double D, int morgan) {
  double T = 0.5 * (Ts + Ta), T15 = T * sqrt(T);
  double mu = 1.458e-6 * T15 / (T + 110.4);
  double k = 2.64638e-3 * T15 / (T + 245.4 * pow(10, -12 / T));
  double nu = mu * 8.314462618 * T / (101325 * 0.0289586);
  double Pr = mu * 1006 / k;
  double Ra = 9.80665 / T * fabs(Ts - Ta) * D * D * D * Pr / (nu * nu), Nu;
  if (morgan) {
    if (Ra < 1e-2) Nu = 0.675 * pow(Ra, 0.058);
    else if (Ra < 1e2) Nu = 1.02 * pow(Ra, 0.148);
    else if (Ra < 1e4) Nu = 0.85 * pow(Ra, 0.188);
    else if (Ra < 1e7) Nu = 0.48 * pow(Ra, 0.25);
    else Nu = 0.125 * cbrt(Ra);
  } else {
    double root = 0.6 + 0.387 * pow(Ra, 1.0 / 6) / pow(1 + pow(0.559 / Pr, 9.0 / 16), 8.0 / 27);
    Nu = root * root;
  }
  return Nu * k * pi * (Ts - Ta) + 0.9 * 5.670374419e-8 * pi * D * (Ts * Ts * Ts * Ts - Ta * Ta * Ta * Ta);
}

static double solve(double areaMm2, double wallMm, double ambientC, int morgan, double I) {
  double A = areaMm2 * 1e-6, d = sqrt(4 * A / pi), D = d + 2e-3 * wallMm;
  double R = log(D / d) / (2 * pi * 0.17), heat20 = I * I * 1.7241e-8 / A, Ta = ambientC + 273.15, q;
#define F(Ts) (q = flow(Ts, Ta, D, morgan), heat20 * (1 + 0.00393 * ((Ts)-293.15 + q * R)) - q)
  double a = Ta + 1, fa = F(a);
  double b = Ta + 2, fb = F(b);
  for (int n = 0; n < 100 && fabs(fb) > 1e-9 * fmin(1, q); n++) {
    double c = b - fb * (b - a) / (fb - fa);
    a = b, fa = fb, b = c, fb = F(b);
  }
  return b + q * R - 273.15;
}

static double points[MOST][5];

int main(void) {
  int n = 0, rounds = 20;
  while (n < MOST && scanf("%lf %lf %lf %lf %lf", points[n], points[n] + 1, points[n] + 2, points[n] + 3, points[n] + 4) == 5) n++;
  double best = 1e300, sum = 0;
  for (int r = 0; r < rounds; r++) {
    struct timespec s, e;
    clock_gettime(CLOCK_MONOTONIC, &s);
    for (int i = 0; i < n; i++) sum += solve(points[i][0], points[i][1], points[i][2], points[i][3] != 0, points[i][4]);
    clock_gettime(CLOCK_MONOTONIC, &e);
    double ns = ((e.tv_sec - s.tv_sec) * 1e9 + (e.tv_nsec - s.tv_nsec)) / n;
    if (ns < best) best = ns;
  }
  printf("%.17g %.17g\n", best, sum / n / rounds);
  return 0;
}
