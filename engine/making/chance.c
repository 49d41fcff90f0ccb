#include "chance.h"

#include <math.h>

#define ROUNDS 10

void
rw_chance_words (const guint32 counter[4], const guint32 key[2], guint32 words[4])
{
  guint32 k0 = key[0], k1 = key[1];

  for (int i = 0; i < 4; i++)
    words[i] = counter[i];
  for (int round = 0; round < ROUNDS; round++)
    {
      guint64 a = (guint64) 0xD2511F53u * words[0], b = (guint64) 0xCD9E8D57u * words[2];
      guint32 w0 = (guint32) (b >> 32) ^ words[1] ^ k0, w2 = (guint32) (a >> 32) ^ words[3] ^ k1;

      words[0] = w0;
      words[1] = (guint32) b;
      words[2] = w2;
      words[3] = (guint32) a;
      k0 += 0x9E3779B9u;
      k1 += 0xBB67AE85u;
    }
}

/* The middles of 2^52 equal steps of (0, 1): never 0, never 1. */
static double
fraction (guint32 high, guint32 low)
{
  guint64 bits = ((guint64) high << 32 | low) >> 12;

  return ((double) bits + 0.5) * 0x1p-52;
}

static void
pair (guint64 seed, guint32 stream, guint32 number, double u[2])
{
  const guint32 counter[4] = { number, stream, 0, 0 };
  const guint32 key[2] = { (guint32) seed, (guint32) (seed >> 32) };
  guint32 words[4];

  rw_chance_words (counter, key, words);
  u[0] = fraction (words[0], words[1]);
  u[1] = fraction (words[2], words[3]);
}

double
rw_chance_even (guint64 seed, guint32 stream, guint32 number)
{
  double u[2];

  pair (seed, stream, number, u);
  return u[0];
}

double
rw_chance_normal (guint64 seed, guint32 stream, guint32 number)
{
  double u[2];

  pair (seed, stream, number, u);
  return sqrt (-2 * log (u[0])) * cos (2 * G_PI * u[1]);
}
