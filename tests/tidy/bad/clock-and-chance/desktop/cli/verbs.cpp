std::uint32_t any() { return randombytes_random(); }
