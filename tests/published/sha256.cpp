// Secure hash examples against the hash that names photos.
#include "studio/photos.hpp"

#include <doctest/doctest.h>

namespace sha256_test {

using studio::sha256;

TEST_CASE("FIPS 180-4: NIST's examples, SHA-256 of one block, two blocks and a million letters") {
  // "Examples with Intermediate Values", SHA256.pdf; the million in FIPS 180-2, appendix B.3; the
  // empty message in the validation system's SHA256ShortMsg.rsp. From memory, and the same from
  // coreutils' sha256sum 9.1.
  CHECK(sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  CHECK(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  CHECK(sha256(std::string(1'000'000, 'a')) ==
        "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
  CHECK(sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

}
