#include "nets/matrix_tree.hpp"

#include <cmath>
#include <utility>

namespace fw::nets {
namespace {

using geometry::FaceId;
using geometry::Polyhedron;
using Word = std::uint64_t;
using Matrix = std::vector<std::vector<Word>>;

/// Faces against faces, the first left out.
Matrix reduced_laplacian(const Polyhedron& polyhedron, Word prime) {
  const std::size_t size = polyhedron.faces().size() - 1;
  Matrix matrix(size, std::vector<Word>(size, 0));
  for (const geometry::Edge& edge : polyhedron.edges()) {
    const std::size_t a = edge.left.index();
    const std::size_t b = edge.right.index();
    for (const std::size_t face : {a, b}) {
      if (face > 0) {
        matrix[face - 1][face - 1] = (matrix[face - 1][face - 1] + 1) % prime;
      }
    }
    if (a > 0 && b > 0) {
      matrix[a - 1][b - 1] = (matrix[a - 1][b - 1] + prime - 1) % prime;
      matrix[b - 1][a - 1] = (matrix[b - 1][a - 1] + prime - 1) % prime;
    }
  }
  return matrix;
}

Word power(Word base, Word exponent, Word prime) {
  Word result = 1;
  for (; exponent > 0; exponent /= 2) {
    if (exponent % 2 == 1) {
      result = result * base % prime;
    }
    base = base * base % prime;
  }
  return result;
}

/// Source: Fermat's little theorem.
Word inverse(Word value, Word prime) { return power(value % prime, prime - 2, prime); }

Word determinant(Matrix matrix, Word prime) {
  Word result = 1;
  for (std::size_t column = 0; column < matrix.size(); ++column) {
    std::size_t pivot = column;
    while (pivot < matrix.size() && matrix[pivot][column] == 0) {
      ++pivot;
    }
    if (pivot == matrix.size()) {
      return 0;
    }
    if (pivot != column) {
      std::swap(matrix[pivot], matrix[column]);
      result = prime - result;
    }
    result = result * matrix[column][column] % prime;
    const Word scale = inverse(matrix[column][column], prime);
    for (std::size_t row = column + 1; row < matrix.size(); ++row) {
      const Word factor = matrix[row][column] * scale % prime;
      for (std::size_t k = column; k < matrix.size() && factor != 0; ++k) {
        matrix[row][k] = (matrix[row][k] + (prime - factor) * matrix[column][k]) % prime;
      }
    }
  }
  return result;
}

bool is_prime(Word number) {
  for (Word divisor = 2; divisor * divisor <= number; ++divisor) {
    if (number % divisor == 0) {
      return false;
    }
  }
  return true;
}

/// Primes below 2^31, so that products fit a word, whose product is above the count. The bound is the product
/// of the diagonal. Source: Hadamard's inequality for positive definite matrices.
std::vector<Word> enough_primes(const Polyhedron& polyhedron) {
  double bits_needed = 1;
  for (std::size_t f = 1; f < polyhedron.faces().size(); ++f) {
    bits_needed += std::log2(static_cast<double>(polyhedron.edges_of(FaceId::at(f)).size()));
  }
  std::vector<Word> primes;
  for (Word candidate = (Word{1} << 31U) - 1; static_cast<double>(primes.size()) * 30.9 < bits_needed; candidate -= 2) {
    if (is_prime(candidate)) {
      primes.push_back(candidate);
    }
  }
  return primes;
}

void multiply_and_add(BigDigits& number, Word factor, Word summand) {
  constexpr Word base = 1'000'000'000;
  Word carry = summand;
  for (std::uint32_t& digit : number) {
    carry += digit * factor;
    digit = static_cast<std::uint32_t>(carry % base);
    carry /= base;
  }
  for (; carry > 0; carry /= base) {
    number.push_back(static_cast<std::uint32_t>(carry % base));
  }
}

}  // namespace

BigDigits spanning_tree_count(const Polyhedron& polyhedron) {
  const std::vector<Word> primes = enough_primes(polyhedron);
  // The count is mixed[0] + primes[0] * (mixed[1] + primes[1] * (...)).
  std::vector<Word> mixed;
  for (std::size_t i = 0; i < primes.size(); ++i) {
    const Word prime = primes[i];
    Word digit = determinant(reduced_laplacian(polyhedron, prime), prime);
    for (std::size_t j = 0; j < i; ++j) {
      digit = (digit + prime - mixed[j] % prime) % prime * inverse(primes[j], prime) % prime;
    }
    mixed.push_back(digit);
  }
  BigDigits count;
  for (std::size_t i = primes.size(); i-- > 0;) {
    multiply_and_add(count, primes[i], mixed[i]);
  }
  return count;
}

}  // namespace fw::nets
